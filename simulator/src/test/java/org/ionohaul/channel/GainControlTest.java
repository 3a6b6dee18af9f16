package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/** A strong neighbour at the band's edge, heard by a receiver that hears 50 dB at once. */
final class GainControlTest {
    private static final long SECOND = 1_000_000_000;
    private static final GainControl LIMITED = new GainControl(0.01, 0.2, 50);
    private static final Interference NEIGHBOUR = new Interference(20, 100, 5, 20, 70, 0, 0.05);

    @Test
    void aStrongNeighbourBlocksWhatLiesBelowItAndForAWhileAfterIt() {
        int blocked = 0;
        for (int trial = 0; trial < 30; trial++) {
            Sky limited = sky(LIMITED, trial);
            Sky free = sky(GainControl.NONE, trial);
            List<Over> overs = limited.noise(End.FAR).occupancy().before(600 * SECOND);
            for (Over over : overs) {
                long end = over.endNanos();
                if (overs.stream()
                                .anyMatch(other -> !other.equals(over)
                                        && other.endNanos() > over.startNanos()
                                        && other.startNanos() < end + 2 * SECOND)
                        || over.startNanos() < 0) {
                    continue;
                }
                // 70 dB over the floor less 50 dB of range: 20 dB over the floor, on all of the band. 0.2 s for 20 dB:
                // 10 dB of them are left 0.1 s later, none after a second.
                assertEquals(100, added(limited, free, end - 1), 1);
                assertEquals(10, added(limited, free, end + SECOND / 10), 0.1);
                assertEquals(0, added(limited, free, end + SECOND), 1e-3);
                blocked++;
            }
        }
        assertTrue(blocked > 20, blocked + " blocked");
    }

    @Test
    void whoBeginsLouderOverrunsTheReceiverUntilTheGainHasFollowed() {
        Sky limited = sky(LIMITED, 0);
        Reception reception = limited.reception(End.FAR, new Passband(2400, 1));
        NoiseBursts bursts = new NoiseBursts();
        int begun = 0;
        List<Over> overs = limited.noise(End.FAR).occupancy().before(600 * SECOND);
        for (Over over : overs) {
            long start = over.startNanos();
            boolean alone = overs.stream()
                    .noneMatch(other -> !other.equals(over)
                            && other.startNanos() < start + SECOND
                            && other.endNanos() > start - 2 * SECOND);
            if (start > SECOND && alone) {
                // 10 ms of the 40 that follow, and none later.
                reception.bursts(start - SECOND / 100, start + 3 * SECOND / 100, bursts);
                assertEquals(0.25 * 1e7, bursts.meanPower(), 1);
                reception.bursts(start + SECOND / 100, start + SECOND / 50, bursts);
                assertEquals(0, bursts.levels());
                begun++;
            }
        }
        assertTrue(begun > 5, begun + " begun");
    }

    /** Returns what the receiver adds at an instant, over the noise floor. */
    private static double added(Sky limited, Sky free, long atNanos) {
        double[] with = new double[1];
        double[] without = new double[1];
        Passband passband = new Passband(100, 1);
        limited.reception(End.FAR, passband).powers(atNanos, new double[1], with);
        free.reception(End.FAR, passband).powers(atNanos, new double[1], without);
        return with[0] - without[0];
    }

    private static Sky sky(GainControl control, int trial) {
        EndConditions end = new EndConditions(
                10,
                Schedule.NONE,
                ImpulsiveNoise.NONE,
                AtmosphericNoise.NONE,
                List.of(NEIGHBOUR),
                control,
                Optional.empty());
        return new Sky(
                new SkyConditions(FadingCondition.FLAT.paths(), SlowVariation.NONE, Schedule.NONE, end, end),
                new TrialStreams(8, trial));
    }
}
