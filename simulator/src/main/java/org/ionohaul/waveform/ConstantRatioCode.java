package org.ionohaul.waveform;

/**
 * Characters of seven elements, four of one kind and three of the other, of ITU-R M.476 and M.625. A character with
 * another ratio is known to be wrong; one in which as many elements flip one way as the other passes.
 */
final class ConstantRatioCode {
    private static final int ELEMENTS = 7;

    private ConstantRatioCode() {}

    /** Returns the probability that a character has the right ratio, right or wrong itself. */
    static double acceptance(double bitErrorRate) {
        return correct(bitErrorRate) + undetectedError(bitErrorRate);
    }

    /** Returns the probability that a character is wrong and passes: pairs of opposite errors among four and three. */
    static double undetectedError(double bitErrorRate) {
        double pair = bitErrorRate * bitErrorRate;
        double unhurt = 1 - bitErrorRate;
        return 4 * 3 * pair * Math.pow(unhurt, 5)
                + 6 * 3 * pair * pair * Math.pow(unhurt, 3)
                + 4 * pair * pair * pair * unhurt;
    }

    /** Returns the probability that no element of a character is wrong. */
    static double correct(double bitErrorRate) {
        return Math.pow(1 - bitErrorRate, ELEMENTS);
    }

    /** Returns the probability that a control signal is taken for one other one, from which it differs in four elements. */
    static double mistaken(double bitErrorRate) {
        return Math.pow(bitErrorRate, 4) * Math.pow(1 - bitErrorRate, 3);
    }

    /** Returns how many characters so many elements make. */
    static int characters(int elements) {
        return elements / ELEMENTS;
    }
}
