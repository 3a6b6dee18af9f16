package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.study.TrialPool;
import org.ionohaul.study.TrialRow;
import org.ionohaul.trial.Trials;

/**
 * How fast each mode goes at each steady SNR: whole sessions between the scenario's stations, over its paths as each trial
 * draws them, with a long file. Both ends have the same SNR, which stays; nothing else is on the air.
 *
 * @param trials how many sessions stand behind each point
 * @param watchedSeconds how long each, from pressing send
 * @param modes an entry a mode, in the scenario's order
 */
public record NetRates(int trials, double watchedSeconds, List<OfMode> modes) {
    /** Where rates are measured, in dB: from where hardly a mode goes to where all have their fastest data rate. */
    public static final List<Double> SNR_DB =
            IntStream.rangeClosed(-2, 10).mapToObj(it -> 4.0 * it).toList();

    private static final int TRIALS = 4;
    private static final double WATCHED_SECONDS = 600;
    /** More than any mode carries in that time at 100 kbit/s. */
    private static final long BYTES = 8_000_000;

    /**
     * How fast one mode goes.
     *
     * @param mode the mode
     * @param points an entry for each of {@link #SNR_DB}
     */
    public record OfMode(Mode mode, List<Point> points) {
        /** Copies the list. */
        public OfMode {
            points = List.copyOf(points);
        }
    }

    /**
     * How fast it goes at one SNR.
     *
     * @param bitsPerSecond user bits received for each second since pressing send, dialling counted, an entry a trial
     */
    public record Point(List<Double> bitsPerSecond) {
        /** Copies the list. */
        public Point {
            bitsPerSecond = List.copyOf(bitsPerSecond);
        }

        /** Returns the mean of the trials. */
        public double mean() {
            return bitsPerSecond.stream()
                    .mapToDouble(Double::doubleValue)
                    .average()
                    .orElse(0);
        }
    }

    /** Copies the list. */
    public NetRates {
        modes = List.copyOf(modes);
    }

    /** Returns how many trials measuring takes, all levels together. */
    public static int trialsToMeasure() {
        return SNR_DB.size() * TRIALS;
    }

    /**
     * Measures the rates of a scenario's modes.
     *
     * @param pool runs {@link #trialsToMeasure()} trials
     * @return the rates; empty if the pool was cancelled before all were measured
     */
    public static Optional<NetRates> of(Scenario scenario, TrialPool pool) {
        List<Trials> levels = SNR_DB.stream()
                .map(snrDb -> new Trials(steady(scenario, snrDb)))
                .toList();
        List<List<Double>> rates =
                pool.run(trialsToMeasure(), it -> bitsPerSecond(levels.get(it / TRIALS), it % TRIALS));
        if (rates.size() < trialsToMeasure()) {
            return Optional.empty();
        }
        return Optional.of(new NetRates(
                TRIALS,
                WATCHED_SECONDS,
                IntStream.range(0, scenario.modes().size())
                        .mapToObj(mode -> new OfMode(scenario.modes().get(mode), points(rates, mode)))
                        .toList()));
    }

    private static List<Double> bitsPerSecond(Trials trials, int trial) {
        return trials.run(trial).stream()
                .map(it -> TrialRow.of(trial, it))
                .map(it -> 8 * it.bytesHeld() / Math.min(WATCHED_SECONDS, it.deliveredSeconds()))
                .toList();
    }

    private static List<Point> points(List<List<Double>> rates, int mode) {
        return IntStream.range(0, SNR_DB.size())
                .mapToObj(level -> new Point(rates.subList(level * TRIALS, (level + 1) * TRIALS).stream()
                        .map(it -> it.get(mode))
                        .toList()))
                .toList();
    }

    private static Scenario steady(Scenario scenario, double snrDb) {
        Transfer endless = new Transfer(
                "endless",
                List.of(new PayloadFile("endless", BYTES)),
                List.of(Direction.UPLOAD),
                List.of(),
                scenario.acceptsErrors());
        return scenario.steadyAt(snrDb).tried(TRIALS).sending(List.of(endless), WATCHED_SECONDS);
    }
}
