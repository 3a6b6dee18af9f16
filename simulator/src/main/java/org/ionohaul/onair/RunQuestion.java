package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.study.TrialPool;
import org.ionohaul.trial.Trials;

/**
 * What an operator asks of runs on the air.
 *
 * @param scenario stations, sky and seed
 * @param comparisons how many comparisons of each design to make, 1 or more
 * @param modes which of its modes are compared, 2 or more
 * @param transfer what is sent
 * @param direction which way
 * @param criterion what makes a mode better
 * @param startSeconds when each evening's first run begins, in seconds after the scenario's pressing send, zero or more
 * @param gapSeconds from the end of a run to the beginning of the next, zero or more
 * @param errorRate accepted chance that a test names one of several like modes, above 0, below 1
 */
public record RunQuestion(
        Scenario scenario,
        int comparisons,
        List<Mode> modes,
        Transfer transfer,
        Direction direction,
        Criterion criterion,
        double startSeconds,
        double gapSeconds,
        double errorRate) {
    /** How many runs of each mode are tried. */
    public static final List<Integer> RUNS_EACH = List.of(1, 2, 3, 5, 7, 10);

    /** Most runs of each mode that are tried; more are worked out, where rounds are independent. */
    public static final int MOST_RUNS_EACH = 10;

    /** Skies that tell the truth, for each comparison. */
    private static final int TRUTH_FACTOR = 10;

    private static final double NANOS_A_SECOND = 1e9;

    /** What is sent in each run, as a share of what was asked: less is over sooner, but may be another question. */
    private static final List<Double> SIZES = List.of(1.0, 0.5, 0.25);

    /** In which orders fewer bytes are tried: those that a step of the sky favours no mode in. */
    private static final List<RunOrder> FAIR = Stream.of(RunOrder.values())
            .filter(it -> it == RunOrder.BY_LOT || it.isOverEvenings())
            .toList();

    /** Copies the list. */
    public RunQuestion {
        modes = List.copyOf(modes);
        if (modes.size() < 2) {
            throw new IllegalArgumentException("runs compare 2 modes or more: " + modes.size());
        }
    }

    /** Returns what may be sent instead: the transfer itself, then smaller ones. */
    List<Transfer> sizes() {
        return SIZES.stream().map(this::scaled).toList();
    }

    /** Returns how many skies {@link #truths} looks at. */
    public int truthTrials() {
        return TRUTH_FACTOR * comparisons;
    }

    /**
     * Finds out which mode is truly better at the stated moment, for each size.
     *
     * @return nothing if cancelled before that was done
     */
    public Optional<List<Truth>> truths(TrialPool pool) {
        List<LongFunction<Evening>> skies = skies();
        List<double[][]> trials = pool.run(truthTrials(), trial -> {
            double[][] seconds = new double[skies.size()][modes.size()];
            for (int size = 0; size < skies.size(); size++) {
                Evening sky = skies.get(size).apply(trial);
                for (int mode = 0; mode < modes.size(); mode++) {
                    seconds[size][mode] =
                            sky.run(mode, 0, timetable().startNanos()).throughSeconds();
                }
            }
            return seconds;
        });
        return trials.size() < truthTrials()
                ? Optional.empty()
                : Optional.of(IntStream.range(0, skies.size())
                        .mapToObj(size -> Truth.of(criterion, ofSize(trials, size)))
                        .toList());
    }

    private double[][] ofSize(List<double[][]> trials, int size) {
        return IntStream.range(0, modes.size())
                .mapToObj(mode ->
                        trials.stream().mapToDouble(it -> it[size][mode]).toArray())
                .toArray(double[][]::new);
    }

    /** Returns the comparisons that answer it. */
    Comparisons ways() {
        List<Design> designs = new ArrayList<>();
        for (RunOrder order : RunOrder.values()) {
            List<Integer> tried = order == RunOrder.TURNS_REVERSED ? RUNS_EACH.subList(0, 1) : RUNS_EACH;
            tried.forEach(it -> designs.add(new Design(0, order, it)));
        }
        for (int size = 1; size < SIZES.size(); size++) {
            for (RunOrder order : FAIR) {
                designs.add(new Design(size, order, MOST_RUNS_EACH));
            }
        }
        return new Comparisons(modes.size(), skies(), criterion, timetable(), errorRate, scenario.seed(), designs);
    }

    private List<LongFunction<Evening>> skies() {
        Trials trials = new Trials(scenario);
        return sizes().stream()
                .<LongFunction<Evening>>map(it -> new SkyEvenings(trials, modes, it, direction))
                .toList();
    }

    private Runs.Timetable timetable() {
        return new Runs.Timetable(Math.round(NANOS_A_SECOND * startSeconds), Math.round(NANOS_A_SECOND * gapSeconds));
    }

    private Transfer scaled(double share) {
        return new Transfer(
                transfer.name(),
                transfer.files().stream()
                        .map(it -> new PayloadFile(it.name(), (long) Math.ceil(share * it.bytes())))
                        .toList(),
                List.of(direction),
                transfer.deadlinesSeconds(),
                transfer.acceptsErrors());
    }
}
