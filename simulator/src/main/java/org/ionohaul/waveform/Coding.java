package org.ionohaul.waveform;

import static org.ionohaul.waveform.Limits.require;

/**
 * How bits become symbols.
 *
 * @param modulation what a symbol carries
 * @param symbolRateBd symbols a second over all carriers together, known symbols and guard intervals counted, positive
 * @param codeRate information bits per code bit, above 0; 1 means uncoded: a single bit error spoils the frame
 */
public record Coding(Modulation modulation, double symbolRateBd, double codeRate) {
    /** Checks every value. */
    public Coding {
        require(symbolRateBd > 0 && symbolRateBd < 1e6, "symbolRateBd must be positive", symbolRateBd);
        require(codeRate > 0 && codeRate <= 1, "codeRate must be above 0 and at most 1", codeRate);
    }

    /** Returns whether there is no error-correcting code. */
    public boolean isUncoded() {
        return codeRate == 1;
    }

    /** Returns the data symbols that so many information bits need. */
    public int symbolsFor(int informationBits) {
        return (int) Math.ceil(informationBits / (codeRate * modulation.bitsPerSymbol()) - 1e-9);
    }

    /**
     * Returns how long so many information bits are on the air, in seconds.
     *
     * @param informationBits how many, 1 or more
     * @param knownShare share of the airtime without data, from 0 to below 1
     */
    public double airtimeSeconds(int informationBits, double knownShare) {
        require(informationBits >= 1, "informationBits must be at least 1", informationBits);
        require(knownShare >= 0 && knownShare < 1, "knownShare must be from 0 to below 1", knownShare);
        return symbolsFor(informationBits) / (symbolRateBd * (1 - knownShare));
    }
}
