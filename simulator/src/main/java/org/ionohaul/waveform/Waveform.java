package org.ionohaul.waveform;

import org.ionohaul.channel.Reception;

/**
 * One kind of burst: how long it lasts and how likely the receiver finds it and decodes each frame in it.
 *
 * <p>What a receiver holds of a frame after one or more copies is a single number, its <em>evidence</em>, whose meaning
 * is private to the implementation: more is better, zero is nothing. All methods are pure functions of the reception
 * and their arguments; none draws a random number, so that chance is drawn in one place, by the link.
 */
public interface Waveform {
    /** Returns the user bytes a frame carries, zero or more. */
    int payloadBytes();

    /**
     * Returns how long a burst is on the air, in nanoseconds, preamble and interleaver fill included.
     *
     * @param frames how many frames it carries, 1 or more
     */
    long burstNanos(int frames);

    /** Returns the length of the preamble in nanoseconds, zero or more. */
    long preambleNanos();

    /**
     * Returns the probability that the receiver finds the burst, by the SNR over its preamble as {@link #meanSnrDb} has
     * it over a burst, less what a correlator over the whole preamble loses because the path changes meanwhile.
     *
     * @param reception how the receiver hears the sender
     * @param startNanos when the burst's first symbol arrives
     */
    double detectionProbability(Reception reception, long startNanos);

    /**
     * Returns what one copy of a frame tells the receiver.
     *
     * @param startNanos when the burst's first symbol arrives
     * @param frame the frame's place in the burst, from 0
     * @param frames how many frames the burst carries
     */
    double evidence(Reception reception, long startNanos, int frame, int frames);

    /**
     * Returns what becomes of a frame that is heard for the first time: what {@link #fate(double, double)} says of its {@link
     * #evidence}, which need not be worked out further than the draw asks for.
     *
     * @param draw uniform from 0 to below 1
     */
    default Fate fate(Reception reception, long startNanos, int frame, int frames, double draw) {
        return fate(evidence(reception, startNanos, frame, frames), draw);
    }

    /**
     * Returns what becomes of a frame of some evidence: below the probability to be right it is right, between that and the
     * probability to pass as decoded it is wrong, else lost.
     *
     * @param draw uniform from 0 to below 1
     */
    default Fate fate(double evidence, double draw) {
        double passes = decodingProbability(evidence);
        if (draw >= passes) {
            return Fate.LOST;
        }
        return draw >= passes - unnoticedErrorProbability(evidence) ? Fate.WRONG : Fate.RIGHT;
    }

    /** Returns the evidence of an earlier copy (or of several, combined) together with that of a new one. */
    double combined(double earlier, double fresh);

    /** Returns the probability that a frame is decoded from the evidence. */
    double decodingProbability(double evidence);

    /**
     * Returns the probability that a frame is taken as decoded from the evidence and yet is wrong: its check noticed
     * nothing, and it is delivered as if it were right. At most {@link #decodingProbability}; zero where checks are good.
     */
    default double unnoticedErrorProbability(double evidence) {
        return 0;
    }

    /**
     * Returns the SNR in 3 kHz, in dB, that an ideal meter would show over the burst: mean signal power over mean power
     * of noise and interference, over the burst's time and the passband.
     */
    double meanSnrDb(Reception reception, long startNanos, int frames);
}
