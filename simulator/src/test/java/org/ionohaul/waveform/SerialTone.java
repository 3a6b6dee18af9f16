package org.ionohaul.waveform;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Reception;
import org.ionohaul.trial.FadingSkies;
import org.ionohaul.trial.LossOnPath;

/**
 * A single-tone waveform of MIL-STD-188-110 as the standard's test bench hears it: 2400 Bd in 3 kHz, interleaved, bits in
 * frames of 1000.
 *
 * @param bitsPerSecond user rate
 * @param coding how bits become symbols
 * @param knownShare share of known symbols
 * @param interleaverSeconds length of the interleaver
 * @param trackingSeconds time between known symbols
 * @param repetitionLossDb what repeating the bits of a code loses against a true code of the same low rate, in dB
 */
record SerialTone(
        int bitsPerSecond,
        Coding coding,
        double knownShare,
        double interleaverSeconds,
        double trackingSeconds,
        double repetitionLossDb) {
    static final long SEED = 11;
    private static final int PAYLOAD_BYTES = 125;
    private static final double EQUALISER_SECONDS = 8e-3;
    private static final double NO_CEILING_DB = 900;
    private static final double ALWAYS_FOUND_DB = -150;
    static final Emission EMISSION = new Emission(3000, 0);

    /**
     * In white noise a K = 7 convolutional decoder errs in short runs, about four bits each: of 1000-bit frames at a bit
     * error rate of 1e-5, 1000 x 1e-5 / 4 are hit.
     */
    static final double STEADY_LOSS = 2.5e-3;

    /** Appendix C rates, 72 frames of 256 data and 31 known symbols and 72 more known ones to a super-frame of 8.64 s. */
    static SerialTone appendixC(int bitsPerSecond, Modulation modulation) {
        return new SerialTone(bitsPerSecond, Coding.oneByOne(modulation, 2400, 0.75), 1.0 / 9, 8.64, 287.0 / 2400, 0);
    }

    /** Rates of the main body, long interleaver: blocks of unknown and known symbols by turns, a code of rate 1/2. */
    static SerialTone mainBody(int bitsPerSecond, Modulation modulation, int repeats, int unknown, int known) {
        double block = unknown + known;
        Coding coding = Coding.oneByOne(modulation, 2400, 0.5 / repeats);
        return new SerialTone(bitsPerSecond, coding, known / block, 4.8, block / 2400, repetitionLossDb(repeats));
    }

    private static double repetitionLossDb(int repeats) {
        RatioTable bits = CodedInformation.of(Modulation.BPSK).bits();
        return Decibels.ofRatio(bits.inverse(0.5) / repeats / bits.inverse(0.5 / repeats));
    }

    /** The 75 bps rate: one of four orthogonal sequences of 32 symbols, taken as one of four tones. */
    static SerialTone orthogonal75() {
        return new SerialTone(75, Coding.oneByOne(Modulation.FSK4, 75, 0.5), 0, 4.8, 32.0 / 2400, 0);
    }

    /** Returns how many user bits a second it carries. */
    double userBitsPerSecond() {
        return coding.symbolRateBd() * (1 - knownShare) * coding.modulation().bitsPerSymbol() * coding.codeRate();
    }

    /** Returns the gap in dB that makes it need exactly so much in white noise. */
    double gapDb(double requiredDb) {
        return requiredDb - steadyNeedDb(0);
    }

    /** Returns the gap in dB that makes it need exactly so much in white noise through a front end, which may add noise of its own. */
    double gapDb(double requiredDb, FrontEnd frontEnd) {
        double most = gapDb(requiredDb);
        if (frontEnd.equals(FrontEnd.PLAIN)) {
            return most;
        }
        return new BrentSolver(1e-3)
                .solve(100, gapDb -> steadyNeedDb(gapDb, frontEnd) - requiredDb, most - 6, most + 0.1);
    }

    double steadyNeedDb(double gapDb) {
        return steadyNeedDb(gapDb, FrontEnd.PLAIN);
    }

    private double steadyNeedDb(double gapDb, FrontEnd frontEnd) {
        FadingSkies steady = new FadingSkies(FadingCondition.FLAT.paths(), EMISSION.passband(), 1, SEED);
        Receiver receiver = new Receiver(EQUALISER_SECONDS, 0, gapDb + repetitionLossDb, NO_CEILING_DB);
        return new LossOnPath(waveform(receiver, frontEnd), steady).needDb(STEADY_LOSS);
    }

    /** Returns the bench with the program's own law of tracking. */
    LossOnPath bench(FadingSkies skies, double gapDb) {
        return bench(skies, new Receiver(EQUALISER_SECONDS, trackingSeconds, gapDb + repetitionLossDb, NO_CEILING_DB));
    }

    /** Returns the same with an equaliser and a front end of another kind. */
    LossOnPath bench(FadingSkies skies, double gapDb, Equaliser equaliser, FrontEnd frontEnd) {
        Receiver receiver = new Receiver(
                EQUALISER_SECONDS,
                trackingSeconds,
                gapDb + repetitionLossDb,
                NO_CEILING_DB,
                Receiver.USUAL_TOLERANCE_HZ,
                equaliser);
        return new LossOnPath(waveform(receiver, frontEnd), skies);
    }

    /**
     * Returns the bench of a receiver that follows the path so many times worse than straight lines would: the error grows
     * with the fourth power of the time between looks, on slow paths such as this is for.
     */
    LossOnPath bench(FadingSkies skies, double gapDb, double overStraightLines) {
        double stretch = Math.pow(overStraightLines / Distortion.OVER_STRAIGHT_LINES, 0.25);
        return bench(skies, new Receiver(EQUALISER_SECONDS, stretch * trackingSeconds, gapDb, NO_CEILING_DB));
    }

    /** Returns the bench of a receiver with a linear equaliser whose gap lies behind it, not before. */
    LossOnPath benchOfGapBehindEqualiser(FadingSkies skies, double gapDb) {
        Receiver decoder = new Receiver(EQUALISER_SECONDS, 0, gapDb + repetitionLossDb, NO_CEILING_DB);
        Receiver moved = new Receiver(EQUALISER_SECONDS, trackingSeconds, 0, NO_CEILING_DB);
        Distortion distortion = new Distortion(moved, coding.symbolSeconds());
        double energyPerSinr = Reception.NOISE_BANDWIDTH_HZ / coding.symbolRateBd();
        return new LossOnPath(new EqualisedFirst(waveform(decoder, FrontEnd.PLAIN), distortion, energyPerSinr), skies);
    }

    private LossOnPath bench(FadingSkies skies, Receiver receiver) {
        return new LossOnPath(waveform(receiver, FrontEnd.PLAIN), skies);
    }

    private Waveform waveform(Receiver receiver, FrontEnd frontEnd) {
        FrameShape frame = ModelledFrame.ofBytes(coding, receiver, knownShare, PAYLOAD_BYTES, 0, interleaverSeconds);
        return Waveforms.of(new BurstShape(0, ALWAYS_FOUND_DB, frontEnd, frame), EMISSION, Combining.NONE);
    }

    /** Returns skies over two equal paths. */
    static FadingSkies twoPaths(double delaySeconds, double spreadHz, int bursts) {
        List<PropagationPath> paths =
                List.of(new PropagationPath(0, 0, 0, spreadHz), new PropagationPath(delaySeconds, 0, 0, spreadHz));
        return new FadingSkies(paths, EMISSION.passband(), bursts, SEED);
    }
}
