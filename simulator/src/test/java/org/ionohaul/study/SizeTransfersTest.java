package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.junit.jupiter.api.Test;

/** Which sizes there are, which are sent, and what two studies have in common. */
final class SizeTransfersTest {
    private static final Scenario LETTER = InventedStudy.scenario(4, InventedStudy.LETTER, "hare", "tortoise");
    private static final List<Direction> BOTH = List.of(Direction.UPLOAD, Direction.DOWNLOAD);

    @Test
    void sizesAreFoundByTheirBytes() {
        assertEquals(List.of(0, 1, 1, 31, 61), counts(999, 1000, 1119, 31_500, 2_000_000));
        assertEquals(0, SizeGrid.indexNotBelow(1000));
        assertEquals(1, SizeGrid.indexNotBelow(1001));
        assertEquals(60, SizeGrid.indexNotBelow(1_000_000));
        assertEquals(61, SizeGrid.indexNotBelow(1_000_001));
    }

    private static List<Integer> counts(long... bytes) {
        return Arrays.stream(bytes).mapToObj(SizeGrid::countUpTo).toList();
    }

    @Test
    void eachSizeUpToTheLargestSentGoesBothWaysAndThenTheLongOne() {
        Scenario sizes = SizeTransfers.in(LETTER, 200_000, 600);
        assertEquals(32, sizes.transfers().size());
        assertEquals(31_500, sizes.transfers().get(30).totalBytes());
        assertEquals(200_000, sizes.transfers().get(31).totalBytes());
        assertTrue(sizes.transfers().stream().allMatch(it -> it.directions().equals(BOTH)));
        assertEquals(600, sizes.horizonSeconds());
        assertEquals(
                List.of(1000L, 1120L, 1250L),
                SizeTransfers.in(LETTER, 1250, 600).transfers().stream()
                        .map(Transfer::totalBytes)
                        .toList());
    }

    @Test
    void moreSizesGoTheWaysThatAreAsked() {
        Scenario more =
                SizeTransfers.more(LETTER, new TreeMap<>(Map.of(50_000L, List.of(Direction.DOWNLOAD), 40_000L, BOTH)));
        assertEquals(
                List.of("40000 B", "50000 B"),
                more.transfers().stream().map(Transfer::name).toList());
        assertEquals(List.of(Direction.DOWNLOAD), more.transfers().get(1).directions());
    }

    /** Of two studies together as many trials count as either has. */
    @Test
    void studiesOfOtherTransfersAddUp() {
        StudyResult first = run(LETTER, 4);
        Scenario other = SizeTransfers.more(LETTER, new TreeMap<>(Map.of(50_000L, List.of(Direction.UPLOAD))));
        StudyResult both = first.with(run(other, 3));
        assertEquals(BOTH, first.directions());
        assertEquals(3, both.trialsDone());
        assertEquals(3, both.cases().size());
        assertTrue(both.isPartial());
        assertEquals(
                List.of("letter", "50000 B"),
                both.scenario().transfers().stream().map(Transfer::name).toList());
        assertTrue(both.cases().stream()
                .allMatch(it -> it.modes().get(0).rows().size() == 3
                        && it.modes().get(0).reachedSeconds(0).length == 3));
        assertTrue(first.cases().get(0).modes().get(0).reachedSeconds(0)[0] > 0);
    }

    private static StudyResult run(Scenario scenario, int trials) {
        int[] looks = {0};
        return new StudyRunner(
                        scenario, InventedStudy.chance(scenario), 1, (done, asked) -> {}, () -> looks[0]++ >= trials)
                .run();
    }

    @Test
    void studiesAreComparedTrialByTrialOnlyWhereTheyAskTheSame() {
        SameCases same = SameCases.of(LETTER);
        assertEquals(same, SameCases.of(InventedStudy.scenario(4, InventedStudy.LETTER, "hare", "tortoise")));
        assertNotEquals(same, SameCases.of(InventedStudy.scenario(5, InventedStudy.LETTER, "hare", "tortoise")));
        assertNotEquals(same, SameCases.of(InventedStudy.scenario(4, InventedStudy.LETTER, "hare", "snail")));
        Transfer another = new Transfer("letter", InventedStudy.LETTER.files(), BOTH, List.of(60.0));
        assertNotEquals(same, SameCases.of(InventedStudy.scenario(4, another, "hare", "tortoise")));
        assertEquals(List.of("6 dB"), new PlannedPoint(Map.of("near.snr", "6 dB")).values());
    }
}
