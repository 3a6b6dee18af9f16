package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class SkyWatchTest {
    private static final TrialStreams STREAMS = new TrialStreams(20_260_111, 0);
    private static final long HOUR_NANOS = 3_600_000_000_000L;
    private static final EndConditions QUIET = EndConditions.quiet(10);

    @Test
    void aSteadySkyIsTheSameAtAllTimes() {
        SkyWatch watch = watch(FadingCondition.FLAT.paths(), QUIET, HOUR_NANOS);
        WatchSummary summary = watch.summary();
        assertEquals(3600, watch.samples());
        assertEquals(10, summary.sinrDb().low(), 1e-9);
        assertEquals(10, summary.sinrDb().high(), 1e-9);
        assertEquals(0, summary.disturbanceDb().median(), 1e-9);
        assertEquals(0, summary.fadesPerMinute());
        assertEquals(0, summary.occupiedShare());
        assertEquals(0, watch.shareBelow(9.9));
        assertEquals(1, watch.shareBelow(10.1));
        assertTrue(watch.overs().isEmpty());
    }

    /**
     * A Rayleigh carrier: deciles of its power are -9.7732 and +3.6222 dB about the mean, the median -1.5917 dB (from
     * the exponential distribution), and Rice's rate at -10 dB and 1 Hz spread is 0.50716 a second, 0.187638 s each. Fifty
     * hours hold about 90 000 fades: 2 % is six standard errors, and leaves room for the one in a hundred fades that is
     * too short to be seen.
     */
    @Test
    void decilesAndFadesAreThoseOfARayleighCarrier() {
        SkyWatch watch = watch(FadingCondition.POOR.paths(), QUIET, 50 * HOUR_NANOS);
        WatchSummary summary = watch.summary();
        assertEquals(10 - 9.7732, summary.sinrDb().low(), 0.15);
        assertEquals(10 - 1.5917, summary.sinrDb().median(), 0.1);
        assertEquals(10 + 3.6222, summary.sinrDb().high(), 0.1);
        assertEquals(60 * 0.50716, summary.fadesPerMinute(), 60 * 0.50716 * 0.02);
        assertEquals(0.50716 * 0.187638, summary.fadedShare(), 0.002);
        assertEquals(0.1, watch.shareBelow(summary.sinrDb().low()), 1e-4);
    }

    @Test
    void spansShareOutTheTimeAndShowWhatHappenedInEach() {
        Schedule lamps = new Schedule(List.of(new Schedule.Point(1800, 0), new Schedule.Point(1801, 6)));
        EndConditions noisy = new EndConditions(10, lamps, ImpulsiveNoise.NONE, List.of());
        List<WatchSummary> spans =
                watch(FadingCondition.FLAT.paths(), noisy, HOUR_NANOS).spans(7);
        assertEquals(7, spans.size());
        assertEquals(0, spans.get(0).fromNanos());
        assertEquals(HOUR_NANOS, spans.get(6).toNanos());
        for (int i = 1; i < 7; i++) {
            assertEquals(spans.get(i - 1).toNanos(), spans.get(i).fromNanos());
        }
        assertEquals(10, spans.get(2).sinrDb().median(), 1e-9);
        assertEquals(6, spans.get(4).disturbanceDb().median(), 1e-9);
        assertEquals(4, spans.get(6).sinrDb().median(), 1e-9);
    }

    @Test
    void otherStationsAreListedAndTheirTimeIsCounted() {
        EndConditions busy =
                new EndConditions(10, Schedule.NONE, ImpulsiveNoise.NONE, Congestion.CONTEST_WEEKEND.populations());
        SkyWatch watch = watch(FadingCondition.FLAT.paths(), busy, HOUR_NANOS);
        assertFalse(watch.overs().isEmpty());
        for (int i = 1; i < watch.overs().size(); i++) {
            assertTrue(watch.overs().get(i - 1).startNanos()
                    <= watch.overs().get(i).startNanos());
        }
        int occupied = 0;
        for (int i = 0; i < watch.samples(); i++) {
            long atNanos = i * watch.stepNanos();
            double others = watch.overs().stream()
                    .filter(over -> over.isOn(atNanos))
                    .mapToDouble(Over::power)
                    .sum();
            assertEquals(others > 1, watch.isOccupied(i));
            assertEquals(10 * Math.log10(1 + others), watch.disturbanceDb(i), 1e-9);
            assertEquals(10 - 10 * Math.log10(1 + others), watch.sinrDb(i), 1e-9);
            occupied += others > 1 ? 1 : 0;
        }
        assertEquals(occupied / 3600.0, watch.summary().occupiedShare(), 1e-9);
    }

    @Test
    void nonsenseIsRefused() {
        SkyWatch watch = watch(FadingCondition.FLAT.paths(), QUIET, HOUR_NANOS);
        assertThrows(IllegalArgumentException.class, () -> watch.spans(0));
        assertThrows(IllegalArgumentException.class, () -> watch.spans(3601));
        assertThrows(IllegalArgumentException.class, () -> watch(FadingCondition.FLAT.paths(), QUIET, 0));
    }

    private static SkyWatch watch(List<PropagationPath> paths, EndConditions near, long lengthNanos) {
        SkyConditions conditions = new SkyConditions(paths, SlowVariation.NONE, Schedule.NONE, near, QUIET);
        return new SkyWatch(new Sky(conditions, STREAMS), End.NEAR, lengthNanos);
    }
}
