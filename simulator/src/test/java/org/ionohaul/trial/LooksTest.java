package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;

/** Bursts are looked at often enough: looks ten times as dense tell the same, under the same skies. */
final class LooksTest {
    private static final int SKIES = 10;
    private static final int BURSTS_EACH = 50;
    private static final long SPACING_NANOS = 20_000_000_000L;
    private static final double LOST = 0.1;

    @Test
    void whatBurstsNeedDoesNotDependOnHowDenselyTheyAreLookedAt() throws ScenarioProblems {
        List<Double> errors = new ArrayList<>();
        for (FadingCondition condition :
                List.of(FadingCondition.MID_LATITUDE_DISTURBED_NVIS, FadingCondition.MID_LATITUDE_MODERATE)) {
            for (String name : List.of("brisk-comb", "patient-climber", "slow-whistle", "steady-wagon")) {
                Mode mode = ScenarioReader.readMode(Path.of("..", "scenarios", "modes", name + ".toml"));
                BurstShape most = mode.dataRates().get(mode.dataRates().size() - 1);
                for (BurstShape burst : List.of(mode.dataRates().get(0), most, mode.acknowledgement())) {
                    Waveform waveform = Waveforms.of(burst, mode.emission(), Combining.NONE);
                    double error =
                            needDb(waveform, skies(condition, mode, 1)) - needDb(waveform, skies(condition, mode, 10));
                    assertEquals(0, error, 0.15, () -> name + ", " + condition);
                    errors.add(error);
                }
            }
        }
        double square = errors.stream().mapToDouble(it -> it * it).sum() / errors.size();
        assertTrue(Math.sqrt(square) < 0.05, () -> "rms " + Math.sqrt(square) + " dB of " + errors);
    }

    private static List<Reception> skies(FadingCondition condition, Mode mode, int denser) {
        SkyConditions conditions = new SkyConditions(
                condition.paths(), SlowVariation.NONE, Schedule.NONE, EndConditions.quiet(0), EndConditions.quiet(0));
        List<Reception> skies = new ArrayList<>();
        for (int sky = 0; sky < SKIES; sky++) {
            Reception reception = new Sky(conditions, new TrialStreams(11, sky))
                    .reception(End.FAR, mode.emission().passband());
            skies.add(new Denser(reception, denser));
        }
        return skies;
    }

    /** Returns the mean SNR at which a tenth of the bursts is lost, not found or not decoded, in dB. */
    private static double needDb(Waveform waveform, List<Reception> skies) {
        double tooLow = -30;
        double enough = 50;
        while (enough - tooLow > 1e-3) {
            double middle = (tooLow + enough) / 2;
            if (lost(waveform, skies, middle) > LOST) {
                tooLow = middle;
            } else {
                enough = middle;
            }
        }
        return enough;
    }

    private static double lost(Waveform waveform, List<Reception> skies, double snrDb) {
        double sum = 0;
        for (Reception sky : skies) {
            Reception raised = new Raised(sky, Math.pow(10, snrDb / 10));
            for (int burst = 0; burst < BURSTS_EACH; burst++) {
                long startNanos = burst * SPACING_NANOS;
                sum += 1
                        - waveform.detectionProbability(raised, startNanos)
                                * waveform.decodingProbability(waveform.evidence(raised, startNanos, 0, 1));
            }
        }
        return sum / (SKIES * BURSTS_EACH);
    }

    /** The same reception said to be steady for so many times shorter. */
    private record Denser(Reception original, int times) implements DerivedReception {
        @Override
        public long steadyNanos() {
            return original.steadyNanos() / times;
        }
    }
}
