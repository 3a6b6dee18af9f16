package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.statistics.RunningMean;

/**
 * What stopping early comes to.
 *
 * @param order in which order runs are made
 * @param stop when it stops
 * @param mostRounds where it ends in any case
 * @param named how often each mode was named
 * @param selfNamed how often one was that was compared with itself
 * @param trials in how many comparisons each
 * @param meanRounds how many rounds it takes in the mean
 */
public record StopResult(
        RunOrder order, Stop stop, int mostRounds, List<Integer> named, int selfNamed, int trials, double meanRounds) {
    /** Copies the list. */
    public StopResult {
        named = List.copyOf(named);
    }

    /** Returns the chance that a mode is named. */
    public Estimate naming(int mode) {
        return new Proportion(named.get(mode), trials).wilson(Estimate.CONFIDENCE);
    }

    /** Returns the chance that a mode is named that is the same as the other. */
    public Estimate falseAlarm() {
        return new Proportion(selfNamed, trials).wilson(Estimate.CONFIDENCE);
    }

    static List<StopResult> all(Comparisons of, List<Verdicts> verdicts) {
        List<StopResult> results = new ArrayList<>();
        List<Integer> stopped = of.stopped();
        for (int place = 0; place < stopped.size(); place++) {
            for (Stop stop : Stop.values()) {
                int at = verdicts.get(0).at(place, stop);
                results.add(of(of.designs().get(stopped.get(place)), stop, at, of.modes(), verdicts));
            }
        }
        return results;
    }

    private static StopResult of(Design design, Stop stop, int at, int modes, List<Verdicts> verdicts) {
        Counted named = new Counted(modes);
        RunningMean rounds = new RunningMean();
        for (Verdicts it : verdicts) {
            named.add(it.stopNamed()[at]);
            rounds.add(it.stopRounds()[at]);
        }
        return new StopResult(
                design.order(),
                stop,
                design.runsEach(),
                named.counts(),
                (int) verdicts.stream()
                        .filter(it -> it.stopSelfNamed()[at] != Rule.NOBODY)
                        .count(),
                verdicts.size(),
                rounds.mean());
    }
}
