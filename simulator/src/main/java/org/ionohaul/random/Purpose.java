package org.ionohaul.random;

/**
 * What a random stream is for. The numbers are part of a stream's address: changing one changes results under the same
 * seed, so a new purpose gets a new number and old numbers are never reused.
 */
public enum Purpose {
    /** Complex gains of the propagation paths; element = path. */
    FADING(1),
    /** Slow variation of the path's median level. */
    SLOW_VARIATION(2),
    /** Other stations heard at an end; element = end. */
    INTERFERENCE(3),
    /** Impulsive noise at an end; element = end. */
    IMPULSES(4),
    /** Scenario inputs that are distributions; element = hash of the key. */
    UNCERTAIN_INPUT(5),
    /** Whether bursts are detected; element = mode. */
    DETECTION(6),
    /** Whether frames are decoded; element = mode. */
    DECODING(7),
    /** Errors of measured SNR; element = mode. */
    SNR_ESTIMATE(8),
    /** Waits and busy channels while dialling; element = mode. */
    DIALLING(9),
    /** Choices of a rate policy; element = mode. */
    POLICY(10),
    /** In which order modes are tried on the air where lots decide. */
    ORDER_OF_RUNS(11),
    /** What becomes of answers that are one of two words; element = mode. */
    REPLIES(12),
    /** Crashes of static at an end; element = end. */
    ATMOSPHERICS(21),
    /** When the sky wave drops out or sporadic E carries it; element = 0, 1. */
    SPELLS(31),
    /** Phase of the ground wave. */
    GROUND_WAVE(32),
    /** Errors of meter readings in a log of runs on the air; element = end. */
    METER_READING(41),
    /** Draws of what a log of runs on the air leaves open; element = stage of learning. */
    LEARNING(42),
    /** What a run that was not made yet might come to; element = candidate. */
    NEXT_RUN(43),
    /** Invented situations that a learner is asked about; trial = number of the round. */
    SITUATIONS(61),
    /** When messages are written in a net; element = station, repeat = kind. */
    MESSAGE_TIMES(51),
    /** How long they are; element = station, repeat = kind. */
    MESSAGE_SIZES(52),
    /** How long those who call wait; element = station. */
    OPERATOR(53),
    /** How well stations of a net hear each other; element = pair. */
    AUDIBILITY(54);

    private final int number;

    Purpose(int number) {
        this.number = number;
    }

    /** Returns the number that stands for this purpose in a stream's address, 1 or more. */
    public int number() {
        return number;
    }
}
