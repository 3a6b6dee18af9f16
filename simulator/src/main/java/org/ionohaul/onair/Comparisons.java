package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.statistics.SignTestStops;

/**
 * Comparisons on the air, each made from its number: the runs of every design, and what an operator would make of them by
 * every rule; beside them the same with one mode under several names, which shows how often a rule names a mode that is no
 * better. Every design of a comparison meets the same evenings.
 *
 * @param modes how many modes are compared, 2 or more
 * @param skiesBySize the evenings by number, for each file size
 * @param criterion what is better
 * @param timetable when runs are made
 * @param errorRate accepted chance that any of several like modes is named, above 0, below 1
 * @param seed seed of what is drawn by lot
 * @param designs the designs
 */
record Comparisons(
        int modes,
        List<LongFunction<Evening>> skiesBySize,
        Criterion criterion,
        Runs.Timetable timetable,
        double errorRate,
        long seed,
        List<Design> designs) {
    Comparisons {
        skiesBySize = List.copyOf(skiesBySize);
        designs = List.copyOf(designs);
    }

    /** Returns the designs on which stopping early is tried: the longest of the first size whose runs come in rounds. */
    List<Integer> stopped() {
        int most = designs.stream().mapToInt(Design::runsEach).max().orElse(0);
        return modes > 2
                ? List.of()
                : IntStream.range(0, designs.size())
                        .filter(it -> designs.get(it).size() == 0
                                && designs.get(it).runsEach() == most
                                && designs.get(it).order() != RunOrder.IN_A_ROW)
                        .boxed()
                        .toList();
    }

    /** Makes one comparison of each design; depends on its number alone. */
    Verdicts make(int number) {
        List<IntFunction<RememberedEvening>> skies =
                skiesBySize.stream().map(it -> evenings(it, number)).toList();
        Verdicts verdicts = Verdicts.none(this);
        List<Integer> stopped = stopped();
        for (int i = 0; i < designs.size(); i++) {
            Runs runs = runs(designs.get(i), number, skies, false);
            Runs self = runs(designs.get(i), number, skies, true);
            verdicts.airNanos()[i] = runs.airNanos();
            verdicts.eveningNanos()[i] = runs.eveningNanos();
            for (Rule rule : Rule.values()) {
                int at = verdicts.at(i, rule);
                verdicts.named()[at] = (byte) rule.named(criterion, runs.throughSeconds(), errorRate);
                verdicts.selfNamed()[at] = (byte) rule.named(criterion, self.throughSeconds(), errorRate);
            }
            count(verdicts, i, runs.throughSeconds());
            int place = stopped.indexOf(i);
            if (place >= 0) {
                stop(verdicts, place, designs.get(i), runs.throughSeconds(), self.throughSeconds());
            }
        }
        return verdicts;
    }

    private Runs runs(Design design, int number, List<IntFunction<RememberedEvening>> skies, boolean isSelf) {
        return Runs.of(
                design.order().evenings(modes, design.runsEach(), lot(seed, number)),
                modes,
                // Each mode takes its turn at being compared with itself.
                isSelf ? name -> number % modes : name -> name,
                skies.get(design.size()),
                timetable);
    }

    private void count(Verdicts verdicts, int design, double[][] throughSeconds) {
        for (int first = 0; first < modes; first++) {
            for (int second = 0; second < modes; second++) {
                verdicts.roundsWon()[verdicts.at(design, first, second)] = (byte) criterion
                        .rounds(throughSeconds[first], throughSeconds[second])
                        .first();
            }
        }
    }

    private void stop(Verdicts verdicts, int place, Design design, double[][] runs, double[][] self) {
        for (Stop stop : Stop.values()) {
            SignTestStops stops = stop.within(design.runsEach(), errorRate);
            Stop.Ended ended = Stop.Ended.of(stops, criterion, runs[0], runs[1]);
            int at = verdicts.at(place, stop);
            verdicts.stopNamed()[at] = (byte) ended.named();
            verdicts.stopRounds()[at] = (byte) ended.rounds();
            verdicts.stopSelfNamed()[at] =
                    (byte) Stop.Ended.of(stops, criterion, self[0], self[1]).named();
        }
    }

    /** Returns what is drawn by lot in a comparison, from its beginning. */
    static UniformRandomProvider lot(long seed, long number) {
        return new TrialStreams(seed, number).open(Purpose.ORDER_OF_RUNS, 0);
    }

    /** An evening belongs to one comparison: no two share a sky, whatever the number of comparisons. */
    private IntFunction<RememberedEvening> evenings(LongFunction<Evening> skies, int number) {
        List<RememberedEvening> known = new ArrayList<>();
        long first = (long) number * modes * Design.MOST_RUNS_EACH;
        return evening -> {
            while (known.size() <= evening) {
                known.add(new RememberedEvening(skies.apply(first + known.size())));
            }
            return known.get(evening);
        };
    }
}
