package org.ionohaul.waveform;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.trial.FadingSkies;
import org.ionohaul.trial.LossOnPath;

/**
 * Fits the one global parameter of the receiver model, by how much a real receiver follows the path worse than straight
 * lines between its looks at known symbols, to requirements of MIL-STD-188-110 Appendix C, and predicts each waveform from the others.
 *
 * <p>Requirements: SNR in 3 kHz for a coded bit error rate of 1e-5 with the very long interleaver, in white noise and on
 * "poor" (two equal paths, 2 ms, 1 Hz); all from memory. Each waveform's implementation gap is its own requirement in
 * white noise less the ideal need. No ceiling at rest: the requirements in white noise show none.
 *
 * <p>A fading requirement in bits has to become one in frames: when a frame is lost in a faded interleaver, a certain
 * share of its bits is wrong. That share is an assumption; the table shows what others would do.
 */
final class Calibration {
    static final double ASSUMED_SHARE = 0.02;
    private static final double BIT_ERROR_RATE = 1e-5;
    private static final double POOR_DELAY_SECONDS = 2e-3;
    private static final double POOR_SPREAD_HZ = 1;
    private static final double STEP = 0.5;
    private static final int FACTORS = 10;
    private static final int PROGRAM = (int) Math.round(Distortion.OVER_STRAIGHT_LINES / STEP);
    private static final double UNREACHABLE_DB = 60;

    static final List<Requirement> REQUIREMENTS = List.of(
            new Requirement(SerialTone.appendixC(3200, Modulation.QPSK), 9, 15),
            new Requirement(SerialTone.appendixC(4800, Modulation.PSK8), 13, 20),
            new Requirement(SerialTone.appendixC(6400, Modulation.QAM16), 16, 23),
            new Requirement(SerialTone.appendixC(8000, Modulation.QAM32), 19, 28),
            new Requirement(SerialTone.appendixC(9600, Modulation.QAM64), 21, 33));

    /** What a standard demands of a waveform, in dB. */
    record Requirement(SerialTone waveform, double steadyDb, double poorDb) {}

    /** One waveform's line of the table, in dB. */
    record Line(
            Requirement requirement,
            double gapDb,
            double predictedDb,
            double factorWithout,
            double predictedFromOthersDb,
            double programDb) {
        double programErrorDb() {
            return programDb - requirement.poorDb();
        }

        double errorDb() {
            return predictedDb - requirement.poorDb();
        }

        double errorFromOthersDb() {
            return predictedFromOthersDb - requirement.poorDb();
        }
    }

    private final List<double[]> needsDb = new ArrayList<>();

    /** Works out what each waveform needs for each factor. */
    Calibration(double wrongBitShare, List<List<LossOnPath>> benches) {
        double loss = BIT_ERROR_RATE / wrongBitShare;
        for (List<LossOnPath> benchesOfOne : benches) {
            needsDb.add(benchesOfOne.stream()
                    .mapToDouble(bench -> Math.min(UNREACHABLE_DB, bench.needDb(loss)))
                    .toArray());
        }
    }

    /** Returns for each waveform a bench for each factor. */
    static List<List<LossOnPath>> benches(int bursts) {
        FadingSkies poor = SerialTone.twoPaths(POOR_DELAY_SECONDS, POOR_SPREAD_HZ, bursts);
        return REQUIREMENTS.stream()
                .map(it -> {
                    double gapDb = it.waveform().gapDb(it.steadyDb());
                    return IntStream.range(0, FACTORS)
                            .mapToObj(i -> it.waveform().bench(poor, gapDb, factor(i)))
                            .toList();
                })
                .toList();
    }

    static double rms(DoubleStream errors) {
        return Math.sqrt(errors.map(error -> error * error).average().orElseThrow());
    }

    /** Returns the factor that fits all waveforms best. */
    double factor() {
        return factor(best(-1));
    }

    List<Line> lines() {
        int all = best(-1);
        return IntStream.range(0, REQUIREMENTS.size())
                .mapToObj(i -> {
                    Requirement requirement = REQUIREMENTS.get(i);
                    double gapDb = requirement.waveform().gapDb(requirement.steadyDb());
                    int others = best(i);
                    return new Line(
                            requirement,
                            gapDb,
                            needsDb.get(i)[all],
                            factor(others),
                            needsDb.get(i)[others],
                            needsDb.get(i)[PROGRAM]);
                })
                .toList();
    }

    private int best(int without) {
        int best = 0;
        for (int factor = 1; factor < FACTORS; factor++) {
            if (rmsErrorDb(factor, without) < rmsErrorDb(best, without)) {
                best = factor;
            }
        }
        return best;
    }

    private double rmsErrorDb(int factor, int without) {
        return rms(IntStream.range(0, REQUIREMENTS.size())
                .filter(i -> i != without)
                .mapToDouble(i -> needsDb.get(i)[factor] - REQUIREMENTS.get(i).poorDb()));
    }

    private static double factor(int index) {
        return index * STEP;
    }
}
