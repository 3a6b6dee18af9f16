package org.ionohaul.anchor;

/** Square constellations of mean energy 1, Gray coded on each axis: one bit an axis is QPSK, two are 16-QAM. */
enum Mapping {
    QPSK(1, 2),
    QAM16(2, 10);

    private final int axisBits;
    private final double scale;

    Mapping(int axisBits, double energy) {
        this.axisBits = axisBits;
        this.scale = 1 / Math.sqrt(energy);
    }

    int bits() {
        return 2 * axisBits;
    }

    /** Writes symbol number {@code symbol} of a row of bits. */
    void map(int[] bits, int symbol, Signal signal, int at) {
        int first = symbol * bits();
        signal.set(at, level(label(bits, first)), level(label(bits, first + axisBits)));
    }

    /** Writes the logarithms of the bits' odds, 0 over 1, of a symbol heard with a noise of the given power. */
    void soften(double real, double imaginary, double noise, double[] ratios, int symbol) {
        for (int bit = 0; bit < axisBits; bit++) {
            ratios[symbol * bits() + bit] = ratio(real, bit, noise);
            ratios[symbol * bits() + axisBits + bit] = ratio(imaginary, bit, noise);
        }
    }

    /** Returns the nearest point of an axis. */
    double nearest(double value) {
        double nearest = level(0);
        for (int label = 1; label < 1 << axisBits; label++) {
            if (Math.abs(value - level(label)) < Math.abs(value - nearest)) {
                nearest = level(label);
            }
        }
        return nearest;
    }

    private int label(int[] bits, int first) {
        int label = 0;
        for (int bit = 0; bit < axisBits; bit++) {
            label |= bits[first + bit] << bit;
        }
        return label;
    }

    /** Bit 0 is the sign, bit 1 tells the inner from the outer level. */
    private double level(int label) {
        double size = axisBits == 1 || (label & 2) == 0 ? 1 : 3;
        return ((label & 1) == 0 ? size : -size) * scale;
    }

    private double ratio(double value, int bit, double noise) {
        double zero = Double.POSITIVE_INFINITY;
        double one = Double.POSITIVE_INFINITY;
        for (int label = 0; label < 1 << axisBits; label++) {
            double distance = value - level(label);
            double square = distance * distance;
            if ((label >> bit & 1) == 0) {
                zero = Math.min(zero, square);
            } else {
                one = Math.min(one, square);
            }
        }
        return (one - zero) / noise;
    }
}
