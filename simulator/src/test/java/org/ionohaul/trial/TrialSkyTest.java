package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

final class TrialSkyTest {
    private static Sky sky(double dopplerSpreadHz, long trial) {
        return new Sky(
                new SkyConditions(
                        List.of(new PropagationPath(0, 0, 0, dopplerSpreadHz)),
                        SlowVariation.NONE,
                        Schedule.NONE,
                        EndConditions.quiet(17),
                        EndConditions.quiet(11)),
                new TrialStreams(1, trial));
    }

    @Test
    void aSteadySkyIsWhatTheScenarioSays() {
        TrialSky trial = TrialSky.of(sky(0, 0), 600);
        assertEquals(17, trial.near().middleSinrDb(), 1e-9);
        assertEquals(17, trial.near().worstTenthSinrDb(), 1e-9);
        assertEquals(11, trial.far().middleSinrDb(), 1e-9);
        assertEquals(0, trial.far().occupiedShare());
    }

    /**
     * The power of Rayleigh fading is exponential: its median is ln 2 of the mean, its lower decile -ln 0.9. Of 200 looks
     * that are independent the quantiles have standard errors of about 0.45 and 1.3 dB, so the means of 100 trials of a
     * tenth of that; allowed are 4 of them.
     */
    @Test
    void fadingHasTheQuantilesOfAnExponentialDistribution() {
        double middle = 0;
        double worst = 0;
        for (int trial = 0; trial < 100; trial++) {
            EndSky near = TrialSky.of(sky(1, trial), 3600).near();
            middle += near.middleSinrDb() / 100;
            worst += near.worstTenthSinrDb() / 100;
        }
        assertEquals(17 + 10 * Math.log10(Math.log(2)), middle, 4 * 0.045);
        assertEquals(17 + 10 * Math.log10(-Math.log(0.9)), worst, 4 * 0.13);
    }

    @Test
    void aWhileIsPositive() {
        assertThrows(IllegalArgumentException.class, () -> TrialSky.of(sky(0, 0), Double.NaN));
    }
}
