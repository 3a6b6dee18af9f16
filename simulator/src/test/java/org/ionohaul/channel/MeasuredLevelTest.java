package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.LongToDoubleFunction;
import java.util.stream.LongStream;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A measured level: its mean power is that of the readings, and slow variation counts as far as it is faster than they are. */
final class MeasuredLevelTest {
    private static final double DEVIATION_DB = 2.5;
    private static final SlowVariation SLOW = new SlowVariation(DEVIATION_DB, 45);
    private static final int TRIALS = 20_000;

    private static final MeasuredLevel EVERY_MINUTE = readings(60, 0, 0, 60, 0, 120, -6, 180, -6, 240, -6);

    private static MeasuredLevel readings(double averageSeconds, double... timesAndLevels) {
        List<Schedule.Point> points = LongStream.range(0, timesAndLevels.length / 2)
                .mapToObj(i -> new Schedule.Point(timesAndLevels[(int) (2 * i)], timesAndLevels[(int) (2 * i + 1)]))
                .toList();
        return new MeasuredLevel(new Schedule(points), averageSeconds);
    }

    private static Sky sky(MeasuredLevel near, SlowVariation slow, List<PropagationPath> paths, long trial) {
        EndConditions measured = new EndConditions(
                10,
                Schedule.NONE,
                ImpulsiveNoise.NONE,
                AtmosphericNoise.NONE,
                List.of(),
                GainControl.NONE,
                Optional.of(near));
        return new Sky(
                new SkyConditions(paths, slow, Schedule.NONE, measured, EndConditions.quiet(10)),
                new TrialStreams(611, trial));
    }

    private static Sky sky(MeasuredLevel near, long trial) {
        return sky(near, SLOW, FadingCondition.FLAT.paths(), trial);
    }

    private static long nanos(double seconds) {
        return Math.round(1e9 * seconds);
    }

    private static double levelDb(Sky sky, End end, double atSeconds) {
        return Decibels.ofRatio(sky.level(end).ratio(nanos(atSeconds)));
    }

    private static void check(String name, double theory, LongToDoubleFunction ofTrial) {
        check(name, theory, TRIALS, ofTrial);
    }

    private static void check(String name, double theory, int trials, LongToDoubleFunction ofTrial) {
        StatisticalCheck.ofMean(
                        name, LongStream.range(0, trials).mapToDouble(ofTrial).toArray(), theory)
                .verify();
    }

    /** At readings, between them, beyond them; whether they are a minute apart or half an hour. */
    @ParameterizedTest
    @CsvSource({"0, 0", "60, 0", "90, -3", "120, -6", "200, -6", "600, -6"})
    void theMeanPowerIsThatOfTheReadings(double atSeconds, double readDb) {
        check(
                "mean power as read every minute at " + atSeconds + " s",
                Decibels.toRatio(readDb),
                trial -> sky(EVERY_MINUTE, trial).level(End.NEAR).ratio(nanos(atSeconds)));
        MeasuredLevel sparse = readings(60, -900, readDb, 900, readDb);
        check(
                "mean power as read every half hour at " + atSeconds + " s",
                Decibels.toRatio(readDb),
                2_000,
                trial -> sky(sparse, trial).level(End.NEAR).ratio(nanos(atSeconds)));
    }

    /** Fading and noise of the end on top: what a meter there shows on average is what was read. */
    @Test
    void theMeanSinrOfAFadingPathIsThatOfTheReadings() {
        double[] signal = new double[1];
        double[] noise = new double[1];
        check("mean SINR as read every minute at 90 s", Decibels.toRatio(10 - 3), trial -> {
            sky(EVERY_MINUTE, SLOW, FadingCondition.MID_LATITUDE_DISTURBED.paths(), trial)
                    .reception(End.NEAR, new Passband(3000, 1))
                    .powers(nanos(90), signal, noise);
            return signal[0] / noise[0];
        });
    }

    /**
     * With correlation exp(-t / T) and a window W about the instant: variance 1 - 4 T/W (1 - exp(-W/2T)) + 2 T/W - 2 (T/W)^2
     * (1 - exp(-W/T)) of that of all slow variation. Asked at a point of the grid, whose step is 1/64 of T: powers are joined by
     * straight lines, which takes 0.05 dB² half-way between.
     */
    @ParameterizedTest
    @CsvSource({"15", "60", "600"})
    void slowVariationCountsAsFarAsItIsFasterThanTheReadings(double windowSeconds) {
        double ratio = 45 / windowSeconds;
        double left = 1
                - 4 * ratio * (1 - Math.exp(-1 / (2 * ratio)))
                + 2 * ratio
                - 2 * ratio * ratio * (1 - Math.exp(-1 / ratio));
        double variance = DEVIATION_DB * DEVIATION_DB * left;
        MeasuredLevel dense = new MeasuredLevel(
                new Schedule(LongStream.rangeClosed(-20, 20)
                        .mapToObj(i -> new Schedule.Point(i * windowSeconds, 0))
                        .toList()),
                windowSeconds);
        double middleDb = -Math.log(10) / 20 * variance;
        check(
                "level between readings " + windowSeconds + " s apart",
                middleDb,
                trial -> levelDb(sky(dense, trial), End.NEAR, 43 * 45 / 64.0));
        check(
                "variance between readings " + windowSeconds + " s apart",
                variance,
                trial -> Math.pow(levelDb(sky(dense, trial), End.NEAR, 43 * 45 / 64.0) - middleDb, 2));
    }

    /** The mean over a reading's own minute hardly scatters: it was read, and is not drawn once more. */
    @Test
    void theMeanOverAReadingsTimeIsTheReading() {
        MeasuredLevel flat = readings(60, -60, 0, 0, 0, 60, 0, 120, 0, 180, 0);
        double[] offDb = LongStream.range(0, 300)
                .mapToDouble(trial -> {
                    Sky sky = sky(flat, trial);
                    return LongStream.range(0, 60)
                            .mapToDouble(second -> levelDb(sky, End.NEAR, 30.5 + second))
                            .average()
                            .orElseThrow();
                })
                .toArray();
        double squares = LongStream.range(0, offDb.length)
                .mapToDouble(i -> offDb[(int) i] * offDb[(int) i])
                .average()
                .orElseThrow();
        // All slow variation would leave sqrt(0.67) of 2.5 dB in a minute's mean: 2.0 dB; found 0.5 dB.
        assertTrue(Math.sqrt(squares) < 0.8, "scatter of " + Math.sqrt(squares) + " dB");
    }

    @Test
    void aStepShowsAtItsTime() {
        Sky sky =
                sky(readings(1, 0, 0, 299, 0, 300, -12, 900, -12), SlowVariation.NONE, FadingCondition.FLAT.paths(), 1);
        assertEquals(0, levelDb(sky, End.NEAR, 298.9), 1e-9);
        assertEquals(-12, levelDb(sky, End.NEAR, 300), 1e-9);
        assertEquals(0, levelDb(sky, End.FAR, 300), 1e-9, "the other end has its own level");
    }

    @Test
    void readingsThatAreAllTheSameAreTheConstantLevelToTheLastBit() {
        List<PropagationPath> paths = FadingCondition.MID_LATITUDE_MODERATE.paths();
        Sky measured = sky(readings(60, -60, 0, 60, 0, 400, 0), SlowVariation.NONE, paths, 5);
        Sky stated = new Sky(
                new SkyConditions(
                        paths, SlowVariation.NONE, Schedule.NONE, EndConditions.quiet(10), EndConditions.quiet(10)),
                new TrialStreams(611, 5));
        for (End end : End.values()) {
            double[] one = new double[4];
            double[] other = new double[4];
            double[] noise = new double[4];
            for (long at = 0; at < 1000; at += 7) {
                measured.reception(end, new Passband(2000, 4)).powers(nanos((double) at), one, noise);
                stated.reception(end, new Passband(2000, 4)).powers(nanos((double) at), other, noise);
                for (int band = 0; band < one.length; band++) {
                    assertEquals(Double.doubleToLongBits(other[band]), Double.doubleToLongBits(one[band]));
                }
            }
        }
    }

    /** Where nothing was read, slow variation counts whole, and is that of the other end. */
    @Test
    void whereNothingWasReadSlowVariationIsThatOfThePath() {
        Sky sky = sky(EVERY_MINUTE, 3);
        double meanOverMiddleDb = Math.log(10) / 20 * DEVIATION_DB * DEVIATION_DB;
        for (double at = 300; at < 900; at += 13) {
            // Straight lines between points of a grid join powers: some thousandths of a decibel.
            assertEquals(
                    levelDb(sky, End.FAR, at) - 6 - meanOverMiddleDb, levelDb(sky, End.NEAR, at), 1e-6, "at " + at);
        }
    }

    @Test
    void aTrialThatBeginsLaterMeetsLaterReadings() {
        SkyConditions later = sky(EVERY_MINUTE, 1).conditions().startingAfter(120);
        assertEquals(4, later.snrAtStartDb(End.NEAR), 1e-12);
        assertEquals(10, later.snrAtStartDb(End.FAR), 1e-12);
        assertEquals(7, later.raisedBy(3).snrAtStartDb(End.NEAR), 1e-12);
        assertEquals(1, later.withSnrAtStart(End.NEAR, 1).snrAtStartDb(End.NEAR), 1e-12);
    }
}
