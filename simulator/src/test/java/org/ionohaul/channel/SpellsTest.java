package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.LongToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.rng.sampling.PermutationSampler;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drop-outs and sporadic E against theory: with exponential times an alternating renewal process is a Markov chain of two
 * states (Feller, An Introduction to Probability Theory, volume 1, chapter XVII, from memory).
 */
final class SpellsTest {
    private static final long SECOND = 1_000_000_000L;
    private static final int TRIALS = 20_000;
    private static final Spells DROP_OUTS = new Spells(30, 10, -20);

    @ParameterizedTest
    @CsvSource({"0", "15", "3600"})
    void theirShareOfTheTimeIsThatOfTheirLengthFromTheFirstMomentOn(long atSeconds) {
        StatisticalCheck.ofMean(
                        "share of trials with a spell at " + atSeconds + " s",
                        perTrial(trial -> times(trial).isOn(atSeconds * SECOND) ? 1 : 0),
                        0.25)
                .verify();
    }

    /** On now and on later: p^2 + p (1 - p) exp(-lag (1 / length + 1 / between)). */
    @ParameterizedTest
    @CsvSource({"1", "5", "20"})
    void whoIsInASpellNowIsInOneLaterAsOftenAsAMarkovChainSays(long lagSeconds) {
        double together = 0.25 * 0.25 + 0.25 * 0.75 * Math.exp(-lagSeconds * (1.0 / 10 + 1.0 / 30));
        StatisticalCheck.ofMean(
                        "spells now and " + lagSeconds + " s later",
                        perTrial(trial -> {
                            SpellTimes times = times(trial);
                            return times.isOn(50 * SECOND) && times.isOn((50 + lagSeconds) * SECOND) ? 1 : 0;
                        }),
                        together)
                .verify();
    }

    /** Looks every h seconds find p (1 - p) (1 - exp(-h (1 / length + 1 / between))) beginnings a look. */
    @Test
    void theyBeginAsOftenAsTheyShould() {
        double[] begun = LongStream.range(0, 400)
                .mapToDouble(trial -> {
                    SpellTimes times = times(trial);
                    return IntStream.rangeClosed(1, 36_000)
                            .filter(i -> times.isOn(i * SECOND / 10) && !times.isOn((i - 1) * SECOND / 10))
                            .count();
                })
                .toArray();
        double aLook = 0.25 * 0.75 * -Math.expm1(-0.1 * (1.0 / 10 + 1.0 / 30));
        StatisticalCheck.ofMean("spells begun in an hour", begun, 36_000 * aLook)
                .verify();
    }

    @Test
    void anyOrderOfAskingGivesTheSame() {
        int[] order = PermutationSampler.natural(5000);
        PermutationSampler.shuffle(new TrialStreams(1, 1).open(Purpose.POLICY, 0), order);
        SpellTimes forward = times(7);
        boolean[] expected = new boolean[order.length];
        for (int i = 0; i < expected.length; i++) {
            expected[i] = forward.isOn(i * SECOND);
        }
        SpellTimes shuffled = times(7);
        for (int i : order) {
            assertEquals(expected[i], shuffled.isOn(i * SECOND), "at " + i + " s");
        }
    }

    @Test
    void noSpellsChangeNothing() {
        SpellTimes none = new SpellTimes(Spells.NONE, new TrialStreams(1, 0).openBlock(Purpose.SPELLS, 0, 0));
        for (long at = 0; at < 100 * SECOND; at += SECOND / 2) {
            assertFalse(none.isOn(at));
            assertEquals(1, none.ratio(at));
        }
    }

    @Test
    void bothDirectionsDropOutTogetherByTheDepthAndAGroundWaveStays() {
        EndConditions end = EndConditions.quiet(10);
        for (double groundDb : new double[] {-200, -6}) {
            SkyConditions conditions = new SkyConditions(
                    FadingCondition.FLAT.paths(),
                    SlowVariation.NONE,
                    Schedule.NONE,
                    end,
                    EndConditions.quiet(3),
                    DROP_OUTS,
                    Spells.NONE,
                    FrequencyError.NONE,
                    FrequencyError.NONE,
                    Optional.of(new GroundWave(0, groundDb)));
            Sky sky = new Sky(conditions, new TrialStreams(20_260_110, 0));
            Reception near = sky.reception(End.NEAR, new Passband(3000, 1));
            Reception far = sky.reception(End.FAR, new Passband(3000, 1));
            int dropped = 0;
            for (long at = 0; at < 1000 * SECOND; at += SECOND / 4) {
                boolean isOn = sky.level(End.NEAR).dropOuts().isOn(at);
                double power = (isOn ? 0.01 : 1) + Math.pow(10, groundDb / 10);
                assertEquals(10 * power, near.meanSignal(at), 1e-9);
                assertEquals(Math.pow(10, 0.3) * power, far.meanSignal(at), 1e-9);
                dropped += isOn ? 1 : 0;
            }
            assertTrue(dropped > 400 && dropped < 2000, "dropped out " + dropped);
        }
    }

    @Test
    void aMeterSeesHowLongTheyLast() {
        EndConditions end = EndConditions.quiet(10);
        SkyConditions conditions = new SkyConditions(
                FadingCondition.FLAT.paths(),
                SlowVariation.NONE,
                Schedule.NONE,
                end,
                end,
                DROP_OUTS,
                new Spells(600, 600, 12),
                FrequencyError.NONE,
                FrequencyError.NONE,
                Optional.empty());
        Sky sky = new Sky(conditions, new TrialStreams(20_260_110, 1));
        SkyWatch watch = new SkyWatch(sky, End.NEAR, 20_000 * SECOND);
        double dropped = watch.summary().droppedOutShare();
        double sporadic = watch.summary().sporadicShare();
        // Variance of a share over a time T: 2 p (1 - p) / (T (1 / length + 1 / between)).
        assertEquals(0.25, dropped, 4 * Math.sqrt(2 * 0.25 * 0.75 / (20_000 * (0.1 + 1.0 / 30))));
        assertEquals(0.5, sporadic, 4 * Math.sqrt(2 * 0.25 / (20_000 * 2.0 / 600)));
        List<Double> levels = IntStream.range(0, watch.samples())
                .mapToObj(watch::signalDb)
                .map(it -> (double) Math.round(it))
                .distinct()
                .sorted()
                .toList();
        assertEquals(List.of(-10.0, 2.0, 10.0, 22.0), levels);
    }

    private static double[] perTrial(LongToDoubleFunction what) {
        return LongStream.range(0, TRIALS).mapToDouble(what).toArray();
    }

    private static SpellTimes times(long trial) {
        return new SpellTimes(DROP_OUTS, new TrialStreams(20_260_109, trial).openBlock(Purpose.SPELLS, 0, 0));
    }
}
