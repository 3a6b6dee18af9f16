package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.HolmCorrection;
import org.ionohaul.statistics.PairedTimes;

/**
 * What can be told of two modes beyond chance: paired exact tests of who keeps each deadline, who delivers at all and who is
 * through first, corrected for their number.
 *
 * @param deadlines for each deadline, the trials on which just one kept it
 * @param delivered the trials on which just one delivered
 * @param firsts the trials on which one was through before the other
 * @param ofDeadlines for each deadline, who keeps it more often
 * @param ofDelivered who delivers more often
 * @param ofFirst who is through first more often
 */
record PairTests(
        List<DiscordantPairs> deadlines,
        DiscordantPairs delivered,
        DiscordantPairs firsts,
        List<Side> ofDeadlines,
        Side ofDelivered,
        Side ofFirst) {
    PairTests {
        deadlines = List.copyOf(deadlines);
        ofDeadlines = List.copyOf(ofDeadlines);
    }

    /**
     * Tests two modes.
     *
     * @param times completion times, the one mode's first
     * @param deadlinesSeconds deadlines, in seconds after pressing send
     * @param errorRate chance that is accepted that any of the tests tells the two apart wrongly
     */
    static PairTests of(PairedTimes times, List<Double> deadlinesSeconds, double errorRate) {
        List<DiscordantPairs> tests = new ArrayList<>(
                deadlinesSeconds.stream().map(times::deadlineKeptByOne).toList());
        tests.add(times.deadlineKeptByOne(Double.MAX_VALUE));
        tests.add(times.signs());
        boolean[] tells = HolmCorrection.rejects(
                tests.stream().mapToDouble(DiscordantPairs::exactPValue).toArray(), errorRate);
        List<Side> sides = IntStream.range(0, tells.length)
                .mapToObj(i -> tells[i] ? Side.of(tests.get(i)) : Side.NEITHER)
                .toList();
        int deadlines = deadlinesSeconds.size();
        return new PairTests(
                tests.subList(0, deadlines),
                tests.get(deadlines),
                tests.get(deadlines + 1),
                sides.subList(0, deadlines),
                sides.get(deadlines),
                sides.get(deadlines + 1));
    }

    /** Returns the tests of what a case is judged by first: the deadlines or, where there are none, delivery. */
    private List<Side> ofSureness() {
        return ofDeadlines.isEmpty() ? List.of(ofDelivered) : ofDeadlines;
    }

    /** Returns the trials behind what a case is judged by first. */
    List<DiscordantPairs> sureness() {
        return deadlines.isEmpty() ? List.of(delivered) : deadlines;
    }

    /** Returns whether each is the surer by one deadline. */
    boolean isMixed() {
        return ofSureness().containsAll(List.of(Side.FIRST, Side.SECOND));
    }

    /** Returns whether the first is the surer by a deadline. */
    boolean isSurer() {
        return ofSureness().contains(Side.FIRST);
    }

    /** Returns which is better: the surer one; where neither is, that which is first more often; neither if mixed. */
    Side better() {
        if (isMixed()) {
            return Side.NEITHER;
        }
        return ofSureness().stream()
                .filter(it -> it != Side.NEITHER)
                .findFirst()
                .orElse(ofFirst);
    }

    /** Returns the same with the modes changed. */
    PairTests swapped() {
        return new PairTests(
                deadlines.stream().map(DiscordantPairs::swapped).toList(),
                delivered.swapped(),
                firsts.swapped(),
                ofDeadlines.stream().map(Side::swapped).toList(),
                ofDelivered.swapped(),
                ofFirst.swapped());
    }
}
