package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.ionohaul.channel.End;
import org.ionohaul.limits.TestedRange;
import org.junit.jupiter.api.Test;

/** What the records of a session take and what they refuse, as their own Javadoc says. */
final class SessionRulesTest {
    private static final int MANY = Integer.MAX_VALUE;

    @Test
    void attemptsBeginAtOneAndEverythingElseAtNothing() {
        TestedRange.ofCount("callAttempts", 1, MANY, it -> new SessionRules((int) it, 0, 0, 1, true, 0, true, 0));
        TestedRange.ofCount("callPauseNanos", 0, Long.MAX_VALUE, it -> new SessionRules(1, it, 0, 1, true, 0, true, 0));
        TestedRange.ofCount("introductions", 0, MANY, it -> new SessionRules(1, 0, (int) it, 1, true, 0, true, 0));
        TestedRange.ofCount("controlAttempts", 1, MANY, it -> new SessionRules(1, 0, 0, (int) it, true, 0, true, 0));
        TestedRange.ofCount("redials", 0, MANY, it -> new SessionRules(1, 0, 0, 1, true, (int) it, true, 0));
        TestedRange.ofCount(
                "redialPauseNanos", 0, Long.MAX_VALUE, it -> new SessionRules(1, 0, 0, 1, true, 0, true, it));
    }

    @Test
    void aSessionHasFilesOfAtLeastOneByte() {
        assertEquals(1, Cargo.from(End.NEAR, List.of(1L)).files());
        assertThrows(IllegalArgumentException.class, () -> Cargo.from(End.NEAR, List.of()));
        assertThrows(IllegalArgumentException.class, () -> Cargo.from(End.NEAR, List.of(5L, 0L)));
        assertThrows(IllegalArgumentException.class, () -> Cargo.from(End.FAR, List.of(5L, 0L)));
    }

    @Test
    void filesAreNumberedFromTheStationThatDialsOn() {
        Cargo cargo = new Cargo(List.of(10L, 20L), List.of(30L));
        assertEquals(List.of(10L, 20L, 30L), List.of(cargo.bytes(0), cargo.bytes(1), cargo.bytes(2)));
        assertEquals(List.of(0, 2), List.of(cargo.firstFrom(End.NEAR), cargo.endFrom(End.NEAR)));
        assertEquals(List.of(2, 3), List.of(cargo.firstFrom(End.FAR), cargo.endFrom(End.FAR)));
    }

    @Test
    void patienceAndHorizonAreTimesToCome() {
        Bench bench = new Bench();
        bench.patience = 1;
        assertEquals(Ending.NEVER_LINKED_OUT_OF_PATIENCE, bench.run(0).ending());
        bench.patience = 0;
        assertThrows(IllegalArgumentException.class, () -> bench.run(0));
        bench.patience = Long.MAX_VALUE;
        assertEquals(1, bench.run(0, 1).endedNanos());
        assertThrows(IllegalArgumentException.class, () -> bench.run(0, 0));
    }

    @Test
    void aResultAgreesWithItself() {
        assertEquals(5, result(Outcome.GAVE_UP, Ending.LINK_LOST, 5).endedNanos());
        assertEquals(
                5, result(Outcome.RUNNING, Ending.NEVER_LINKED_AT_HORIZON, 5).endedNanos());
        assertThrows(IllegalArgumentException.class, () -> result(Outcome.RUNNING, Ending.LINK_LOST, 5));
        assertThrows(IllegalArgumentException.class, () -> result(Outcome.GAVE_UP, Ending.AT_HORIZON, 5));
        assertThrows(IllegalArgumentException.class, () -> result(Outcome.GAVE_UP, Ending.LINK_LOST, 6));
    }

    private static SessionResult result(Outcome outcome, Ending ending, long endedNanos) {
        return new SessionResult(
                outcome,
                ending,
                endedNanos,
                OptionalLong.empty(),
                OptionalLong.empty(),
                OptionalLong.empty(),
                List.of(),
                ProgressCurve.of(new long[0], new long[0]),
                TimeBudget.of(Map.of(Cause.DIALLING, 2L, Cause.SILENCE, 3L)),
                List.of(),
                0,
                0,
                0,
                0);
    }

    @Test
    void aCurveTellsWhenSoManyBytesWereHeld() {
        ProgressCurve curve = ProgressCurve.of(new long[] {10, 20, 30}, new long[] {100, 200, 400});
        assertEquals(3, curve.size());
        assertEquals(20, curve.atNanos(1));
        assertEquals(200, curve.heldBytes(1));
        assertEquals(10, curve.reachedNanos(1));
        assertEquals(20, curve.reachedNanos(200));
        assertEquals(30, curve.reachedNanos(201));
        assertEquals(ProgressCurve.NEVER, curve.reachedNanos(401));
        assertThrows(IllegalArgumentException.class, () -> ProgressCurve.of(new long[1], new long[2]));
    }

    @Test
    void onlySomeEndingsAreWithoutLinkOrAtTheHorizon() {
        assertEquals(
                List.of(Ending.NEVER_LINKED, Ending.NEVER_LINKED_OUT_OF_PATIENCE, Ending.NEVER_LINKED_AT_HORIZON),
                List.of(Ending.values()).stream().filter(Ending::isWithoutLink).toList());
        assertEquals(
                List.of(Ending.NEVER_LINKED_AT_HORIZON, Ending.AT_HORIZON),
                List.of(Ending.values()).stream().filter(Ending::isAtHorizon).toList());
    }
}
