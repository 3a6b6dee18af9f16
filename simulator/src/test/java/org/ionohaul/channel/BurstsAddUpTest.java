package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** However a stretch of time is cut, bursts of noise bring as much energy into its parts as into the whole. */
final class BurstsAddUpTest {
    private static final Passband ONE_BAND = new Passband(3000, 1);
    private static final int STRETCHES = 200;
    private static final long LONGEST_NANOS = 20_000_000_000L;

    /** A slot is a whole number of nanoseconds or not; callers without end overrun the receiver half a second each. */
    static List<EndConditions> ends() {
        Interference callers = new Interference(600, 20, 2, 3, 40, 10, 0.5);
        return List.of(
                end(new ImpulsiveNoise(0.05, 20, 0.01), List.of(), GainControl.NONE),
                end(new ImpulsiveNoise(0.5, 3, 0.01 / 3), List.of(), GainControl.NONE),
                end(ImpulsiveNoise.NONE, List.of(callers), new GainControl(0.5, 0.2, 50)));
    }

    private static EndConditions end(ImpulsiveNoise impulses, List<Interference> others, GainControl control) {
        return new EndConditions(10, Schedule.NONE, impulses, AtmosphericNoise.NONE, others, control, Optional.empty());
    }

    @ParameterizedTest
    @MethodSource("ends")
    void partsBringAsMuchAsTheWhole(EndConditions end) {
        SkyConditions conditions =
                new SkyConditions(FadingCondition.FLAT.paths(), SlowVariation.NONE, Schedule.NONE, end, end);
        Reception reception = new Sky(conditions, new TrialStreams(77, 0)).reception(End.FAR, ONE_BAND);
        UniformRandomProvider random = RandomSource.SPLIT_MIX_64.create(12);
        double all = 0;
        for (int stretch = 0; stretch < STRETCHES; stretch++) {
            long from = random.nextLong(600_000_000_000L);
            long to = from + 2 + random.nextLong(LONGEST_NANOS);
            double parts = 0;
            for (long at = from; at < to; ) {
                long next = Math.min(to, at + 1 + random.nextLong(LONGEST_NANOS / 20));
                parts += energy(reception, at, next);
                at = next;
            }
            double whole = energy(reception, from, to);
            assertEquals(whole, parts, 1e-9 * whole, "from " + from + " to " + to);
            all += whole;
        }
        assertTrue(all > 0);
    }

    private static double energy(Reception reception, long fromNanos, long toNanos) {
        NoiseBursts bursts = new NoiseBursts();
        reception.bursts(fromNanos, toNanos, bursts);
        return bursts.meanPower() * (toNanos - fromNanos);
    }
}
