package org.ionohaul.waveform;

/**
 * The one ratio that an equaliser without end makes of a band that fades, from those of its parts, all equally wide. Belongs
 * to one thread.
 *
 * <p>With decision feedback and right decisions log(1 + Es/N0) is its mean over the band (Cioffi, Dudevoir, Eyuboglu and
 * Forney, "MMSE decision-feedback equalizers and coding", IEEE Trans. Commun. 43(10), 1995). A linear equaliser of least mean
 * square error leaves an error of 1 / (1 + Es/N0), which is its mean over the band (Proakis, Digital Communications, on
 * linear equalisers of infinite length; the same paper; both from memory). Both are freed from their bias.
 */
final class Equalisation {
    private static final double LARGE = 1e100;

    private final boolean isLinear;
    private int parts;
    private double sum;
    private double product;

    /** Prepares for an equaliser; where {@link Equaliser#BY_PARTS} asks for one ratio, it is that of decision feedback. */
    Equalisation(Equaliser equaliser) {
        this.isLinear = equaliser == Equaliser.LINEAR;
        begin();
    }

    /** Begins anew, with no parts. */
    void begin() {
        parts = 0;
        sum = 0;
        product = 1;
    }

    /** Adds a part of the band by its Es/N0, zero or more. */
    void add(double esN0) {
        parts++;
        if (isLinear) {
            sum += 1 / (1 + esN0);
            return;
        }
        product *= 1 + esN0;
        if (product > LARGE) {
            sum += Exponentials.log(product);
            product = 1;
        }
    }

    /** Returns the Es/N0 of all parts together; there must be one at least. */
    double esN0() {
        return isLinear ? parts / sum - 1 : Exponentials.exp((sum + Exponentials.log(product)) / parts) - 1;
    }
}
