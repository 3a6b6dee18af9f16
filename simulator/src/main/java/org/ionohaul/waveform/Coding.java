package org.ionohaul.waveform;

import org.ionohaul.limits.OutOfRange;

/**
 * How bits become symbols.
 *
 * @param modulation what a symbol carries
 * @param carriers over how many carriers side by side the symbols are spread, 1 or more
 * @param symbolRateBd symbols a second over all carriers together, positive; known symbols are counted, guard
 *     intervals are not: the time they take belongs to the share without data
 * @param codeRate information bits per code bit, above 0; 1 means uncoded: a single bit error spoils the frame
 */
public record Coding(Modulation modulation, int carriers, double symbolRateBd, double codeRate) {
    /** Checks every value. */
    public Coding {
        OutOfRange.unless(carriers >= 1 && carriers <= 1_000_000, "carriers", "must be at least 1", carriers);
        OutOfRange.unless(symbolRateBd > 0 && symbolRateBd < 1e6, "symbolRateBd", "must be positive", symbolRateBd);
        OutOfRange.unless(codeRate > 0 && codeRate <= 1, "codeRate", "must be above 0 and at most 1", codeRate);
    }

    /** Returns the coding of symbols that follow each other on one carrier or in one tone at a time. */
    public static Coding oneByOne(Modulation modulation, double symbolRateBd, double codeRate) {
        return new Coding(modulation, 1, symbolRateBd, codeRate);
    }

    /** Returns how long a symbol lasts, in seconds. */
    public double symbolSeconds() {
        return carriers / symbolRateBd;
    }

    /**
     * Returns whether each symbol fills the emission's band: those of a single carrier do, since its bandwidth is their
     * rate. Of several carriers each has its own part, and a tone lies in one place.
     */
    public boolean fillsBand() {
        return carriers == 1 && !modulation.isTone();
    }

    /** Returns whether there is no error-correcting code. */
    public boolean isUncoded() {
        return codeRate == 1;
    }

    /** Returns the data symbols that so many information bits need by themselves. */
    public int symbolsFor(int informationBits) {
        return (int) Math.ceil(exactSymbols(informationBits) - 1e-9);
    }

    private double exactSymbols(int informationBits) {
        return informationBits / (codeRate * modulation.bitsPerSymbol());
    }

    /**
     * Returns how long so many information bits are on the air, in seconds. Without an interleaver a frame fills whole
     * symbols; through an interleaver frames flow as one stream of bits.
     *
     * @param knownShare share of the airtime without data, from 0 to below 1
     * @param interleaverSeconds length of the interleaver, zero for none
     */
    public double airtimeSeconds(int informationBits, double knownShare, double interleaverSeconds) {
        OutOfRange.unless(informationBits >= 1, "informationBits", "must be at least 1", informationBits);
        OutOfRange.unless(knownShare >= 0 && knownShare < 1, "knownShare", "must be from 0 to below 1", knownShare);
        double symbols = interleaverSeconds > 0 ? exactSymbols(informationBits) : symbolsFor(informationBits);
        return symbols / (symbolRateBd * (1 - knownShare));
    }
}
