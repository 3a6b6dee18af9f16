package org.ionohaul.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Delays and Doppler widths count by the power that has them. */
final class PathSpreadTest {
    private static final double REACH = 7e-3;
    private static final double SYMBOL = 0.4e-3;

    @Test
    void ofTwoEqualPathsTheLaterCountsHalf() {
        assertEquals(0.5, beyond(echo(9e-3, 0)), 1e-12);
        // A quarter of a symbol beyond the reach: a quarter of half the power.
        assertEquals(0.125, beyond(echo(7.1e-3, 0)), 1e-12);
        assertEquals(0, beyond(echo(7e-3, 0)), 1e-12);
    }

    @Test
    void aWeakLateEchoCountsByItsPower() {
        assertEquals(0.01 / 1.01, beyond(echo(9e-3, -20)), 1e-12);
        assertEquals(0.001 / 1.001, beyond(echo(9e-3, -30)), 1e-12);
    }

    @Test
    void aReceiverPrefersTheStrongPathToTheEarlyOne() {
        assertEquals(0.01 / 1.01, beyond(echo(9e-3, 20)), 1e-12);
    }

    @Test
    void equalPathsAreAsWideAsEachOfThem() {
        assertEquals(2, spread(new PropagationPath(0, 0, 0, 2), new PropagationPath(1e-3, 0, 0, 2)), 1e-12);
    }

    @Test
    void aWeakFastPathHardlyWidensTheSpectrum() {
        // Variances (half the spread, squared) weighed by power: (1 x 0.25 + 0.01 x 25) / 1.01 Hz^2.
        double expected = 2 * Math.sqrt((0.25 + 0.01 * 25) / 1.01);
        assertEquals(expected, spread(new PropagationPath(0, 0, 0, 1), new PropagationPath(1e-3, -20, 0, 10)), 1e-12);
    }

    @Test
    void pathsShiftedAgainstEachOtherBeatAndTogetherTheyDoNot() {
        // Two equal lines 40 Hz apart: standard deviation 20 Hz.
        assertEquals(40, spread(new PropagationPath(0, 0, 5, 0), new PropagationPath(1e-3, 0, 45, 0)), 1e-9);
        assertEquals(1, spread(new PropagationPath(0, 0, 45, 1), new PropagationPath(1e-3, 0, 45, 1)), 1e-9);
    }

    private static List<PropagationPath> echo(double delaySeconds, double powerDb) {
        return List.of(new PropagationPath(0, 0, 0, 1), new PropagationPath(delaySeconds, powerDb, 0, 1));
    }

    private static double beyond(List<PropagationPath> paths) {
        return new PowerDelays(paths).shareBeyond(REACH, SYMBOL);
    }

    private static double spread(PropagationPath first, PropagationPath second) {
        EndConditions quiet = EndConditions.quiet(0);
        return new SkyConditions(List.of(first, second), SlowVariation.NONE, Schedule.NONE, quiet, quiet)
                .dopplerSpreadHz();
    }
}
