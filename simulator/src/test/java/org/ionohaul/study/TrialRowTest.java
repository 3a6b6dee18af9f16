package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.ionohaul.session.Cause;
import org.ionohaul.session.DataRateUse;
import org.ionohaul.session.Ending;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.TimeBudget;
import org.junit.jupiter.api.Test;

/** What a row keeps of a session. */
final class TrialRowTest {
    @Test
    void aRowKeepsWhatTheSessionCameTo() {
        SessionResult session = InventedStudy.delivered(100);
        TrialRow row = TrialRow.of(3, session);
        assertEquals(3, row.trial());
        assertEquals(session.outcome(), row.outcome());
        assertEquals(session.ending(), row.ending());
        assertEquals(100, row.deliveredSeconds());
        assertEquals(session.confirmedNanos(), row.confirmedNanos());
        assertEquals(session.closedNanos(), row.closedNanos());
        assertEquals(session.filesDeliveredNanos().get(0), row.fileDeliveredNanos(0));
        assertEquals(new DataRateUse(95 * InventedStudy.SECOND, 20, 4), row.dataRate(1));
        assertEquals(
                session.endedNanos(),
                Arrays.stream(Cause.values()).mapToLong(row::budgetNanos).sum());
        assertEquals(10, row.oversSent());
        assertEquals(1, row.acknowledgementsLost());
    }

    @Test
    void progressIsKeptAtTheSizesOfTheGrid() {
        TrialRow row = TrialRow.of(0, InventedStudy.delivered(100));
        assertEquals(50, row.firstByteSeconds());
        assertEquals(50, row.reachedSeconds(SizeGrid.BYTES.indexOf(1000L)));
        assertEquals(100, row.reachedSeconds(SizeGrid.BYTES.indexOf(1250L)));
        assertEquals(100, row.reachedSeconds(SizeGrid.BYTES.indexOf(2000L)));
        assertEquals(Double.POSITIVE_INFINITY, row.reachedSeconds(SizeGrid.BYTES.indexOf(2500L)));
        assertEquals(2000, row.bytesHeld());
    }

    @Test
    void whatNeverCameStaysEmpty() {
        TrialRow row = TrialRow.of(0, InventedStudy.gaveUp(100));
        assertEquals(Ending.LINK_LOST, row.ending());
        assertEquals(OptionalLong.empty(), row.deliveredNanos());
        assertEquals(Double.POSITIVE_INFINITY, row.deliveredSeconds());
        assertEquals(OptionalLong.empty(), row.fileDeliveredNanos(0));
        assertEquals(1000, row.bytesHeld());
        assertEquals(2, row.linksLost());
    }

    @Test
    void everyFileAndDataRateHasItsPlace() {
        OptionalLong none = OptionalLong.empty();
        List<DataRateUse> uses = List.of(new DataRateUse(7, 1, 2), new DataRateUse(8, 3, 4));
        SessionResult session = new SessionResult(
                Outcome.GAVE_UP,
                Ending.LINK_LOST,
                9,
                none,
                none,
                none,
                List.of(OptionalLong.of(5), OptionalLong.of(6), none),
                ProgressCurve.of(new long[0], new long[0]),
                TimeBudget.of(Map.of(Cause.SILENCE, 9L)),
                uses,
                1,
                2,
                3,
                4);
        TrialRow row = TrialRow.of(0, session);
        assertEquals(9, row.endedNanos());
        assertEquals(
                session.filesDeliveredNanos(),
                IntStream.range(0, row.files())
                        .mapToObj(row::fileDeliveredNanos)
                        .toList());
        assertEquals(
                uses,
                IntStream.rangeClosed(1, row.dataRates())
                        .mapToObj(row::dataRate)
                        .toList());
        assertEquals(
                List.of(1, 2, 3, 4),
                List.of(row.linksLost(), row.oversSent(), row.acknowledgementsLost(), row.wrongFrames()));
        assertThrows(IndexOutOfBoundsException.class, () -> row.fileDeliveredNanos(3));
        assertThrows(IndexOutOfBoundsException.class, () -> row.dataRate(0));
        assertEquals(Double.POSITIVE_INFINITY, row.reachedSeconds(0));
        assertEquals(6e-9, ModeTrials.fileSeconds(row, 1), 1e-15);
        assertEquals(Double.POSITIVE_INFINITY, ModeTrials.fileSeconds(row, 2));
    }

    /** ISO 3: three decades of the series R20 and the end of the last. */
    @Test
    void gridHasTheSixtyOneSizesFromOneKilobyteToOneMegabyte() {
        assertEquals(61, SizeGrid.BYTES.size());
        assertEquals(1000, SizeGrid.BYTES.get(0));
        assertEquals(31_500, SizeGrid.BYTES.get(30));
        assertEquals(1_000_000, SizeGrid.BYTES.get(60));
        assertEquals(SizeGrid.BYTES.stream().sorted().toList(), SizeGrid.BYTES);
    }
}
