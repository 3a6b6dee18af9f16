package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/** The whole sky as a receiver meets it. */
final class SkyTest {
    private static final TrialStreams STREAMS = new TrialStreams(20_260_104, 7);
    private static final long SECOND = 1_000_000_000L;
    private static final Passband ONE_BAND = new Passband(3000, 1);
    private static final List<PropagationPath> FLAT = FadingCondition.FLAT.paths();
    private static final List<PropagationPath> POOR = FadingCondition.POOR.paths();

    @Test
    void withoutFadingTheReceiverGetsTheScenariosSnr() {
        Sky sky = sky(FLAT, EndConditions.quiet(12), EndConditions.quiet(3));
        assertEquals(12, sinrDb(sky.reception(End.NEAR, ONE_BAND), 5 * SECOND), 1e-9);
        assertEquals(3, sinrDb(sky.reception(End.FAR, ONE_BAND), 5 * SECOND), 1e-9);
        assertEquals(Long.MAX_VALUE, sky.reception(End.NEAR, ONE_BAND).steadyNanos());
    }

    @Test
    void bothDirectionsShareTheFading() {
        SkyConditions conditions = new SkyConditions(
                POOR,
                new SlowVariation(2.5, 45),
                schedule(0, 0, 3600, -20),
                EndConditions.quiet(12),
                EndConditions.quiet(3));
        Sky sky = new Sky(conditions, STREAMS);
        Passband passband = new Passband(2400, 4);
        Reception near = sky.reception(End.NEAR, passband);
        Reception far = sky.reception(End.FAR, passband);
        SinrMeter atNear = new SinrMeter();
        SinrMeter atFar = new SinrMeter();
        for (long t = 0; t < 1000 * SECOND; t += SECOND / 3) {
            atNear.listen(near, t);
            atFar.listen(far, t);
            for (int band = 0; band < 4; band++) {
                assertEquals(Decibels.toRatio(9), atNear.sinr(band) / atFar.sinr(band), 1e-9);
            }
        }
    }

    @Test
    void anyOrderOfAskingAndAnyOtherReceiverGiveTheSameBits() {
        EndConditions busy = new EndConditions(
                10,
                schedule(100, 0, 2000, 6),
                new ImpulsiveNoise(0.05, 15, 0.02),
                Congestion.BUSY_EVENING.populations());
        SkyConditions conditions =
                new SkyConditions(POOR, new SlowVariation(2.5, 45), Schedule.NONE, busy, EndConditions.quiet(3));
        Reception forward = new Sky(conditions, STREAMS).reception(End.NEAR, new Passband(2000, 3));
        Sky disturbed = new Sky(conditions, STREAMS);
        Reception backward = disturbed.reception(End.NEAR, new Passband(2000, 3));
        Reception other = disturbed.reception(End.FAR, ONE_BAND);
        List<double[]> asked = new ArrayList<>();
        for (long t = 0; t < 5000 * SECOND; t += SECOND) {
            asked.add(sinr(forward, t));
        }
        for (int i = asked.size() - 1; i >= 0; i--) {
            sinr(other, (i * 7919L % 5000) * SECOND);
            assertArrayEquals(asked.get(i), sinr(backward, i * SECOND));
        }
    }

    /** Each path's power is normalised, and the paths are independent: the mean over trials is the median SNR's ratio. */
    @Test
    void meanPowerOverTrialsIsOneHoweverManyPathsThereAre() {
        List<PropagationPath> three = List.of(
                new PropagationPath(0, 0, 0, 1),
                new PropagationPath(0.001, -3, 0.3, 2),
                new PropagationPath(0.004, -10, -1, 0));
        double[] powers = new double[40_000];
        for (int trial = 0; trial < powers.length; trial++) {
            SkyConditions conditions = conditions(three, EndConditions.quiet(0), EndConditions.quiet(0));
            Sky sky = new Sky(conditions, new TrialStreams(20_260_105, trial));
            powers[trial] = sinr(sky.reception(End.NEAR, new Passband(3000, 5)), 3 * SECOND)[1];
        }
        StatisticalCheck.ofMean("mean power of three unequal paths", powers, 1).verify();
    }

    /** Two paths 2 ms apart repeat over frequency every 1/(2 ms) = 500 Hz. */
    @Test
    void twoPathsAreAsSelectiveAsTheirDelaySays() {
        Reception reception =
                sky(POOR, EndConditions.quiet(0), EndConditions.quiet(0)).reception(End.NEAR, new Passband(3000, 12));
        double[] sinr = sinr(reception, 11 * SECOND);
        for (int band = 0; band + 2 < 12; band++) {
            assertEquals(sinr[band + 2], sinr[band], 1e-9);
        }
        assertTrue(Math.abs(sinr[0] - sinr[1]) > 1e-3);
        assertEquals(0.5, reception.shareBeyond(0, 0.002));
        assertEquals(1, reception.dopplerSpreadHz());
        assertEquals(125_000_000, reception.steadyNanos());
    }

    /** Two paths that do not fade, 2 Hz apart in Doppler shift, beat twice a second between 0 and twice the power. */
    @Test
    void dopplerShiftsBeat() {
        List<PropagationPath> shifted =
                List.of(new PropagationPath(0, 0, 1.25, 0), new PropagationPath(0, 0, -0.75, 0));
        Reception reception =
                sky(shifted, EndConditions.quiet(0), EndConditions.quiet(0)).reception(End.NEAR, ONE_BAND);
        double mean = 0;
        double largest = 0;
        for (int i = 0; i < 500; i++) {
            double power = sinr(reception, i * SECOND / 1000)[0];
            assertEquals(power, sinr(reception, i * SECOND / 1000 + 30 * SECOND + SECOND / 2)[0], 1e-9);
            mean += power / 500;
            largest = Math.max(largest, power);
        }
        assertEquals(1, mean, 1e-9);
        assertEquals(2, largest, 1e-3);
    }

    @Test
    void trendMovesBothEndsAndNoiseItsOwn() {
        EndConditions noisy = new EndConditions(10, schedule(600, 0, 601, 6), ImpulsiveNoise.NONE, List.of());
        SkyConditions conditions =
                new SkyConditions(FLAT, SlowVariation.NONE, schedule(0, 0, 1000, -10), noisy, EndConditions.quiet(10));
        Sky sky = new Sky(conditions, STREAMS);
        assertEquals(5, sinrDb(sky.reception(End.NEAR, ONE_BAND), 500 * SECOND), 1e-9);
        assertEquals(5, sinrDb(sky.reception(End.FAR, ONE_BAND), 500 * SECOND), 1e-9);
        assertEquals(10 - 8 - 6, sinrDb(sky.reception(End.NEAR, ONE_BAND), 800 * SECOND), 1e-9);
        assertEquals(10 - 8, sinrDb(sky.reception(End.FAR, ONE_BAND), 800 * SECOND), 1e-9);
        assertEquals(0, sinrDb(sky.reception(End.FAR, ONE_BAND), 2000 * SECOND), 1e-9);
    }

    @Test
    void impulsesStrikeTheirShareOfSlotsIndependentlyAndOnlyAtTheirEnd() {
        ImpulsiveNoise impulses = new ImpulsiveNoise(0.05, 20, 0.02);
        EndConditions struck = new EndConditions(10, Schedule.NONE, impulses, List.of());
        Sky sky = sky(FLAT, struck, EndConditions.quiet(10));
        Reception near = sky.reception(End.NEAR, ONE_BAND);
        double[] hits = new double[200_000];
        double[] pairs = new double[hits.length - 1];
        for (int slot = 0; slot < hits.length; slot++) {
            double sinr = sinr(near, slot * SECOND / 50 + SECOND / 100)[0];
            hits[slot] = sinr < 1 ? 1 : 0;
            assertEquals(hits[slot] > 0 ? 0.1 : 10, sinr, 1e-9);
            assertEquals(10, sinrDb(sky.reception(End.FAR, ONE_BAND), slot * SECOND / 50), 1e-9);
        }
        for (int slot = 0; slot < pairs.length; slot++) {
            pairs[slot] = hits[slot] * hits[slot + 1];
        }
        StatisticalCheck.ofMean("share of slots with an impulse", hits, 0.05).verify();
        StatisticalCheck.ofMean("pairs of impulses in neighbouring slots", pairs, 0.0025)
                .verify();
    }

    @Test
    void eachEndHasItsOwnImpulsesAndEachPopulationItsOwnStations() {
        Interference visitors = new Interference(60, 60, 5, 5, 0, 5, 0.5);
        EndConditions alike =
                new EndConditions(10, Schedule.NONE, new ImpulsiveNoise(0.2, 20, 0.02), List.of(visitors, visitors));
        Sky sky = sky(FLAT, alike, alike);
        double[] both = new double[50_000];
        for (int slot = 0; slot < both.length; slot++) {
            long atNanos = slot * SECOND / 50 + SECOND / 100;
            boolean isNear = sky.noise(End.NEAR).noise(atNanos) > 1;
            boolean isFar = sky.noise(End.FAR).noise(atNanos) > 1;
            both[slot] = isNear && isFar ? 1 : 0;
        }
        StatisticalCheck.ofMean("impulses at both ends at once", both, 0.04).verify();
        List<Over> near = sky.noise(End.NEAR).occupancy().before(3600 * SECOND);
        List<Over> far = sky.noise(End.FAR).occupancy().before(3600 * SECOND);
        List<Double> powers = Stream.concat(near.stream(), far.stream())
                .map(Over::power)
                .distinct()
                .toList();
        // About 60 visits an hour of two populations at two ends, each with a level of its own.
        assertTrue(powers.size() > 180, "levels: " + powers.size());
    }

    @Test
    void impulsesInEverySlotAreAHigherFloor() {
        EndConditions struck = new EndConditions(10, Schedule.NONE, new ImpulsiveNoise(1, 20, 0.02), List.of());
        Reception near = sky(FLAT, struck, EndConditions.quiet(10)).reception(End.NEAR, ONE_BAND);
        for (int i = 0; i < 1000; i++) {
            assertEquals(-10, sinrDb(near, i * SECOND / 10), 1e-9);
        }
    }

    /** A station that never stops, at the noise floor, across the whole band: noise doubles, 3.0103 dB lost. */
    @Test
    void anotherStationAddsItsPowerToTheNoiseOfItsEnd() {
        Sky sky = skyWithOneTalking(endless(schedule(500, 0, 501, 3), 0, 1));
        assertEquals(10 - 10 * Math.log10(2), sinrDb(sky.reception(End.NEAR, ONE_BAND), 100 * SECOND), 1e-9);
        double noise = 1 + Math.pow(10, 0.3);
        assertEquals(10 - 10 * Math.log10(noise), sinrDb(sky.reception(End.NEAR, ONE_BAND), 600 * SECOND), 1e-9);
        assertEquals(10, sinrDb(sky.reception(End.FAR, ONE_BAND), 100 * SECOND), 1e-9);
    }

    @Test
    void listeningHearsOnlyStationsOverTheThreshold() {
        Sky sky = skyWithOneTalking(endless(schedule(500, 0, 501, 10), 6, 0.3));
        assertTrue(sky.isOccupied(End.NEAR, 10 * SECOND, 3));
        assertFalse(sky.isOccupied(End.NEAR, 10 * SECOND, 7));
        assertFalse(sky.isOccupied(End.NEAR, 600 * SECOND, 3), "the risen floor hides it");
        assertFalse(sky.isOccupied(End.FAR, 10 * SECOND, 3));
        assertFalse(sky.isOccupied(End.FAR, 10 * SECOND, -100));
    }

    /** Others that talk for 4 s and pause for 3 on average: what is said of a span is what looking every 10 ms finds. */
    @Test
    void aChannelIsOccupiedWithoutABreakIfEveryLookFindsOthers() {
        Interference chatty = new Interference(60, 120, 4, 3, 20, 3, 0.5);
        EndConditions disturbed = new EndConditions(10, Schedule.NONE, ImpulsiveNoise.NONE, List.of(chatty));
        Sky sky = sky(FLAT, disturbed, EndConditions.quiet(10));
        int occupied = 0;
        int compared = 0;
        for (long from = 0; from < 3000 * SECOND; from += 3 * SECOND) {
            long until = from + 2 * SECOND;
            boolean everyLook = true;
            for (long at = from; at <= until; at += SECOND / 100) {
                everyLook &= sky.isOccupied(End.NEAR, at, 6);
            }
            // A break that is shorter than the step may fall between two looks.
            boolean isOccupied = sky.isOccupied(End.NEAR, from, until, 6);
            assertTrue(everyLook || !isOccupied, "at " + from);
            if (!hasShortBreak(sky, from, until)) {
                assertEquals(everyLook, isOccupied, "at " + from);
                compared++;
            }
            occupied += isOccupied ? 1 : 0;
        }
        assertTrue(occupied > 100 && occupied < 900, "occupied " + occupied);
        assertTrue(compared > 800, "compared " + compared);
    }

    private static boolean hasShortBreak(Sky sky, long from, long until) {
        Occupancy occupancy = sky.noise(End.NEAR).occupancy();
        for (int span = occupancy.spanAt(from); span <= occupancy.spanAt(until); span++) {
            if (occupancy.endNanos(span) - occupancy.startNanos(span) < SECOND / 100) {
                return true;
            }
        }
        return false;
    }

    /** A station over a quarter of the band disturbs, at four times its density, only the sub-bands it covers. */
    @Test
    void aNarrowStationHurtsOnlyTheSubBandsItCovers() {
        Sky sky = skyWithOneTalking(endless(Schedule.NONE, 10, 0.25));
        double[] sinr = sinr(sky.reception(End.NEAR, new Passband(3000, 300)), 10 * SECOND);
        int clear = 0;
        int covered = 0;
        for (double ratio : sinr) {
            clear += Math.abs(ratio - 10) < 1e-9 ? 1 : 0;
            covered += Math.abs(ratio - 10.0 / 41) < 1e-9 ? 1 : 0;
        }
        assertTrue(covered == 75 || covered == 74, "covered: " + covered);
        assertTrue(clear >= 224, "clear: " + clear);
    }

    @Test
    void instantsBeforeTheTrialAreRefused() {
        Reception near =
                sky(FLAT, EndConditions.quiet(0), EndConditions.quiet(0)).reception(End.NEAR, ONE_BAND);
        assertThrows(IllegalArgumentException.class, () -> sinr(near, -1));
    }

    /** Visits and overs so long, and so rare, that whoever talks at the start goes on. */
    private static EndConditions endless(Schedule noiseRiseDb, double medianDb, double bandShare) {
        Interference population = new Interference(3.6e-4, 9e6, 9e6, 9e6, medianDb, 0, bandShare);
        return new EndConditions(10, noiseRiseDb, ImpulsiveNoise.NONE, List.of(population));
    }

    /** Returns the first trial's sky in which exactly one station talks at the near end when the trial begins. */
    private static Sky skyWithOneTalking(EndConditions near) {
        for (long trial = 0; ; trial++) {
            Sky sky = new Sky(conditions(FLAT, near, EndConditions.quiet(10)), new TrialStreams(20_260_106, trial));
            Occupancy occupancy = sky.noise(End.NEAR).occupancy();
            if (occupancy.on(occupancy.spanAt(0)).size() == 1) {
                return sky;
            }
        }
    }

    private static Sky sky(List<PropagationPath> paths, EndConditions near, EndConditions far) {
        return new Sky(conditions(paths, near, far), STREAMS);
    }

    private static SkyConditions conditions(List<PropagationPath> paths, EndConditions near, EndConditions far) {
        return new SkyConditions(paths, SlowVariation.NONE, Schedule.NONE, near, far);
    }

    private static Schedule schedule(double from, double fromDb, double to, double toDb) {
        return new Schedule(List.of(new Schedule.Point(from, fromDb), new Schedule.Point(to, toDb)));
    }

    private static double sinrDb(Reception reception, long atNanos) {
        return Decibels.ofRatio(sinr(reception, atNanos)[0]);
    }

    private static double[] sinr(Reception reception, long atNanos) {
        SinrMeter meter = new SinrMeter();
        meter.listen(reception, atNanos);
        return IntStream.range(0, meter.subBands()).mapToDouble(meter::sinr).toArray();
    }
}
