package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.HolmCorrection;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.statistics.RunningMean;

/**
 * Which of several modes is best under common skies, and which can't be told apart from it.
 *
 * <p>A mode is out only if another is better beyond chance, one that no mode is better than; those that are left hold the
 * truly best one in 95 of 100 studies (subset selection, as in S. S. Gupta, Technometrics 7, 1965, and J. C. Hsu's multiple
 * comparisons with the best, Ann. Stat. 9, 1981). Each pair may err with the accepted rate over the number of other modes, and {@link HolmCorrection}
 * holds that over all tests of a pair. So a mode is named alone that is no better than another, overall or for any
 * deadline, in at most 5 of 100 studies, also where all are alike: there K (K - 1) / 2 pairs err with 5 / (K - 1) of 100
 * each, and K - 1 of them must err for a name.
 */
final class SubsetSelection {
    /** Tests of each mode against each that comes after it in the scenario. */
    private final List<List<PairTests>> pairs = new ArrayList<>();

    private final List<double[]> seconds;
    private final double errorRate;
    private final int modes;
    private final List<Double> deadlinesSeconds;
    private final List<Integer> ranking;

    /**
     * Compares modes.
     *
     * @param seconds for each mode, its completion time on each trial, infinite if it never came; at least one mode
     * @param deadlinesSeconds deadlines, in seconds after pressing send
     * @param errorRate chance that is accepted that a mode is named alone that is not the best: 5 of 100 over the number of
     *     selections of which none may err
     * @param ties how modes rank that beat and are beaten alike
     */
    SubsetSelection(List<double[]> seconds, List<Double> deadlinesSeconds, double errorRate, Comparator<Integer> ties) {
        this.seconds = List.copyOf(seconds);
        this.errorRate = errorRate;
        modes = seconds.size();
        this.deadlinesSeconds = List.copyOf(deadlinesSeconds);
        for (int i = 0; i < modes; i++) {
            double[] first = seconds.get(i);
            pairs.add(seconds.subList(i + 1, modes).stream()
                    .map(second ->
                            PairTests.of(PairedTimes.of(first, second), deadlinesSeconds, errorRate / (modes - 1)))
                    .toList());
        }
        ranking = IntStream.range(0, modes)
                .boxed()
                .sorted(Comparator.comparingInt((Integer mode) -> beaters(mode, PairTests::better))
                        .thenComparingInt(mode -> -winsLessLosses(mode))
                        .thenComparing(ties))
                .toList();
    }

    /**
     * Returns which modes keep one deadline most often, as far as they can be told apart.
     *
     * @param seconds for each mode, its completion time on each trial, infinite if it never came; at least one mode
     * @param deadlineSeconds the deadline, in seconds after pressing send
     */
    static Leaders ofDeadline(List<double[]> seconds, double deadlineSeconds) {
        List<Integer> kept = seconds.stream()
                .map(it -> (int)
                        Arrays.stream(it).filter(at -> at <= deadlineSeconds).count())
                .toList();
        return new SubsetSelection(
                        seconds,
                        List.of(deadlineSeconds),
                        1 - Estimate.CONFIDENCE,
                        Comparator.comparingInt((Integer mode) -> -kept.get(mode))
                                .thenComparing(Comparator.naturalOrder()))
                .leaders(0);
    }

    /**
     * Returns all modes, best first: by how many others are better beyond chance, and where these are as many, by how
     * often they are through before another.
     */
    List<Integer> ranking() {
        return ranking;
    }

    /** Returns the modes that can't be told apart from the best: the surer or, where none is surer, the sooner one. */
    Leaders leaders() {
        return leaders(PairTests::better, PairTests::sureness);
    }

    /** Returns the modes that can't be told apart from that which keeps a deadline most often. */
    Leaders leaders(int deadline) {
        return leaders(
                pair -> pair.ofDeadlines().get(deadline),
                pair -> List.of(pair.deadlines().get(deadline)));
    }

    /** Returns the tests of two modes, in this order. */
    PairTests tests(int first, int second) {
        return first < second
                ? pairs.get(first).get(second - first - 1)
                : tests(second, first).swapped();
    }

    /**
     * Returns whether a mode's arriving more often than another makes more than half of its lead in deadlines kept, in the
     * mean over them, beyond chance; without deadlines arriving is all there is.
     */
    boolean isArrivalMost(int first, int second) {
        RunningMean aboveHalf = new RunningMean();
        for (int trial = 0; trial < seconds.get(first).length; trial++) {
            double a = seconds.get(first)[trial];
            double b = seconds.get(second)[trial];
            aboveHalf.add(lead(a, b, Double.MAX_VALUE)
                    - deadlinesSeconds.stream()
                                    .mapToDouble(deadline -> lead(a, b, deadline))
                                    .average()
                                    .orElse(0)
                            / 2);
        }
        return aboveHalf.count() > 1 && aboveHalf.lowerBound(Estimate.CONFIDENCE) > 0;
    }

    private static int lead(double first, double second, double deadline) {
        return (first <= deadline ? 1 : 0) - (second <= deadline ? 1 : 0);
    }

    private Leaders leaders(Function<PairTests, Side> better, Function<PairTests, List<DiscordantPairs>> chances) {
        List<Integer> unbeaten =
                ranking.stream().filter(mode -> beaters(mode, better) == 0).toList();
        // A mode that only one beats which is beaten itself can still not be told apart from the best. Each of three
        // modes may come first more often than the next: then none is best.
        List<Integer> leaders = ranking.stream()
                .filter(mode -> unbeaten.stream()
                        .noneMatch(it -> !it.equals(mode) && better.apply(tests(it, mode)) == Side.FIRST))
                .toList();
        return new Leaders(leaders, alike(leaders, chances));
    }

    private int beaters(int mode, Function<PairTests, Side> better) {
        return (int) others(mode)
                .filter(other -> better.apply(tests(other, mode)) == Side.FIRST)
                .count();
    }

    private int winsLessLosses(int mode) {
        return others(mode)
                .mapToObj(other -> tests(mode, other).firsts())
                .mapToInt(it -> it.first() - it.second())
                .sum();
    }

    private IntStream others(int mode) {
        return IntStream.range(0, modes).filter(other -> other != mode);
    }

    private Optional<Alike> alike(List<Integer> leaders, Function<PairTests, List<DiscordantPairs>> chances) {
        double boundsOfCase = modes * (modes - 1) / 2.0 * (Math.max(1, deadlinesSeconds.size()) + 1);
        return leaders.stream()
                .flatMap(first -> leaders.stream()
                        .filter(second -> first < second)
                        .map(second -> Alike.of(
                                PairedTimes.of(seconds.get(first), seconds.get(second)),
                                chances.apply(tests(first, second)),
                                errorRate / boundsOfCase)))
                .reduce(Alike::and);
    }
}
