package org.ionohaul.waveform;

import org.apache.commons.numbers.gamma.Erfc;

/**
 * How likely a code of finite length fails: the normal approximation of Polyanskiy, Poor and Verdu, "Channel coding rate
 * in the finite blocklength regime", IEEE Trans. Inf. Theory 56(5), 2010, eq. 296, solved for the error probability.
 *
 * @param symbols channel uses of a frame, 1 or more
 * @param bits information bits of the frame, 1 or more
 */
record NormalApproximation(int symbols, int bits) {
    /** Below this length the approximation is known to go astray at small error probabilities. */
    private static final int SHORT_SYMBOLS = 200;

    /** No short frame is believed to fail more rarely than this. */
    private static final double LEAST_LOSS_OF_SHORT = 1e-5;

    private static final double LEAST_DISPERSION = 1e-9;

    /**
     * Returns the probability that the frame is decoded.
     *
     * @param information mean information density in bits a symbol, zero or more
     * @param dispersion its variance in bits squared a symbol, zero or more
     */
    double successProbability(double information, double dispersion) {
        double surplusBits = symbols * information - bits + Math.log(symbols) / (2 * Math.log(2));
        double deviationBits = Math.sqrt(symbols * Math.max(dispersion, LEAST_DISPERSION));
        double success = Erfc.value(-surplusBits / deviationBits / Math.sqrt(2)) / 2;
        return symbols < SHORT_SYMBOLS ? Math.min(success, 1 - LEAST_LOSS_OF_SHORT) : success;
    }
}
