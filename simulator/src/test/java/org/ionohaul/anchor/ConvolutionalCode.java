package org.ionohaul.anchor;

import java.util.Arrays;

/**
 * The convolutional code of constraint length 7 and rate 1/2 with generators 133 and 171 (octal), an open standard
 * (CCSDS 131.0-B, IEEE 802.11), ended by six zeros, and its soft-decision maximum-likelihood decoder (Viterbi 1967;
 * Proakis, Digital Communications, 8.2).
 */
final class ConvolutionalCode {
    static final int TAIL = 6;
    private static final int STATES = 1 << TAIL;
    private static final int FIRST = 0133;
    private static final int SECOND = 0171;

    private ConvolutionalCode() {}

    /** Returns the two code bits for every information bit and every bit of the tail. */
    static int[] encode(int[] bits) {
        int[] code = new int[2 * (bits.length + TAIL)];
        int register = 0;
        for (int i = 0; i < bits.length + TAIL; i++) {
            register = (register >> 1) | ((i < bits.length ? bits[i] : 0) << TAIL);
            code[2 * i] = parity(register & FIRST);
            code[2 * i + 1] = parity(register & SECOND);
        }
        return code;
    }

    /**
     * Returns the most likely information bits.
     *
     * @param ratios of each code bit the logarithm of the odds of 0 over 1, on any one scale
     */
    static int[] decode(double[] ratios) {
        int steps = ratios.length / 2;
        double[] metrics = new double[STATES];
        double[] next = new double[STATES];
        boolean[][] oddCame = new boolean[steps][STATES];
        Arrays.fill(metrics, Double.NEGATIVE_INFINITY);
        metrics[0] = 0;
        for (int step = 0; step < steps; step++) {
            extend(metrics, next, oddCame[step], ratios[2 * step], ratios[2 * step + 1]);
            double[] spent = metrics;
            metrics = next;
            next = spent;
        }
        return trace(oddCame);
    }

    /** The register holds the newest bit highest; a state is its six newest bits. */
    private static void extend(double[] from, double[] to, boolean[] oddCame, double first, double second) {
        for (int state = 0; state < STATES; state++) {
            int evenRegister = state << 1;
            double even = from[evenRegister & (STATES - 1)] + agreement(evenRegister, first, second);
            double odd = from[(evenRegister | 1) & (STATES - 1)] + agreement(evenRegister | 1, first, second);
            oddCame[state] = odd > even;
            to[state] = Math.max(even, odd);
        }
    }

    private static double agreement(int register, double first, double second) {
        return (parity(register & FIRST) == 0 ? first : -first) + (parity(register & SECOND) == 0 ? second : -second);
    }

    private static int[] trace(boolean[][] oddCame) {
        int[] bits = new int[oddCame.length - TAIL];
        int state = 0;
        for (int step = oddCame.length - 1; step >= 0; step--) {
            if (step < bits.length) {
                bits[step] = state >> (TAIL - 1);
            }
            state = ((state << 1) | (oddCame[step][state] ? 1 : 0)) & (STATES - 1);
        }
        return bits;
    }

    /** Returns how many of the two code bits that a register makes are 1. */
    static int weight(int register) {
        return parity(register & FIRST) + parity(register & SECOND);
    }

    private static int parity(int bits) {
        return Integer.bitCount(bits) & 1;
    }
}
