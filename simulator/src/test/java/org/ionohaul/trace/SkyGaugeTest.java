package org.ionohaul.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.Over;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.waveform.Emission;
import org.junit.jupiter.api.Test;

final class SkyGaugeTest {
    private static final long SECOND = 1_000_000_000L;
    private static final double SNR_DB = 15;
    private static final double CREST_DB = 3;

    @Test
    void interferenceOnPartOfBandAndTimeCountsWithItsMeanPower() {
        // Visitors 20 dB over the floor in 3 kHz, on 60 % of them. The gauge watches 3 s of an over and the second
        // after:
        // the mean power of noise and interference is 1 + 3/4 * 100.
        double expectedDb = SNR_DB - CREST_DB - 10 * Math.log10(1 + 0.75 * 100);
        int measured = 0;
        for (int trial = 0; trial < 20; trial++) {
            Sky sky = new Sky(conditions(), new TrialStreams(5, trial));
            SkyGauge gauge = new SkyGauge(sky, new Emission(3000, CREST_DB));
            List<Over> overs = new SkyWatch(sky, End.FAR, 3600 * SECOND).overs();
            for (Over over : overs) {
                long from = over.endNanos() - 3 * SECOND;
                long until = over.endNanos() + SECOND;
                if (from >= Math.max(0, over.startNanos()) && isAlone(over, overs, from, until)) {
                    assertEquals(expectedDb, gauge.meanDb(End.FAR, from, until), 1e-9, over.toString());
                    assertEquals(SNR_DB - CREST_DB, gauge.meanDb(End.NEAR, from, until), 1e-9);
                    measured++;
                }
            }
        }
        assertTrue(measured > 20, measured + " overs measured");
    }

    private static boolean isAlone(Over over, List<Over> overs, long fromNanos, long untilNanos) {
        return overs.stream()
                .allMatch(it -> it.equals(over) || it.endNanos() <= fromNanos || it.startNanos() >= untilNanos);
    }

    private static SkyConditions conditions() {
        Interference visitor = new Interference(6, 60, 60, 600, 20, 0, 0.6);
        return new SkyConditions(
                FadingCondition.FLAT.paths(),
                SlowVariation.NONE,
                Schedule.NONE,
                EndConditions.quiet(SNR_DB),
                new EndConditions(SNR_DB, Schedule.NONE, ImpulsiveNoise.NONE, List.of(visitor)));
    }
}
