package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.ionohaul.channel.AtmosphericNoise;
import org.ionohaul.channel.Congestion;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.GainControl;
import org.ionohaul.channel.ImpulsiveNoise;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.Sky;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.SlowVariation;
import org.ionohaul.link.Signals;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.waveform.Fate;
import org.ionohaul.waveform.Waveform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A frame's fate is that of its whole evidence, however little of that is worked out. */
final class FateTest {
    private static final Path DEMO = Path.of("..", "scenarios", "river-watch.toml");
    private static final long HOUR_NANOS = 3_600_000_000_000L;
    private static final int BURSTS = 60;
    private static final int FRAMES = 2;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ax25-go-back-n",
                "ax25-selective-reject",
                "brisk-comb",
                "burst-high-rate",
                "burst-low-latency",
                "m625-arq",
                "patient-climber",
                "serial-tone-arq",
                "slow-whistle",
                "steady-wagon"
            })
    void boundsDecideLikeTheWholeEvidence(String name) throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(DEMO, Map.of("modes", "[\"" + name + "\"]"));
        Mode mode = scenario.modes().get(0);
        LinkPlan plan = new LinkPlan(scenario, mode);
        List<Waveform> bounded = all(plan.spec().signals());
        List<Waveform> whole = all(plan.spec().signals());
        SplittableRandom random = new SplittableRandom(name.hashCode());
        Map<Fate, Integer> counts = new EnumMap<>(Fate.class);
        for (int trial = 0; trial < 6; trial++) {
            Reception reception =
                    sky(trial, random).reception(End.FAR, mode.emission().passband());
            for (int which = 0; which < bounded.size(); which++) {
                for (int burst = 0; burst < BURSTS; burst++) {
                    long startNanos = random.nextLong(HOUR_NANOS);
                    for (int frame = 0; frame < FRAMES; frame++) {
                        double evidence = whole.get(which).evidence(reception, startNanos, frame, FRAMES);
                        // Near its probability as well as anywhere: where a frame is clear, few draws are.
                        double passes = whole.get(which).decodingProbability(evidence);
                        for (double draw : new double[] {
                            random.nextDouble(), near(passes, 1e-3 * random.nextDouble()), near(passes, -1e-6), 1e-9
                        }) {
                            Fate expected = whole.get(which).fate(evidence, draw);
                            Fate fate = bounded.get(which).fate(reception, startNanos, frame, FRAMES, draw);
                            assertEquals(expected, fate, () -> name + " draw " + draw + " of " + passes);
                            counts.merge(fate, 1, Integer::sum);
                        }
                        // What was left open before must not stand for what is asked now.
                        assertEquals(evidence, bounded.get(which).evidence(reception, startNanos, frame, FRAMES));
                    }
                }
            }
        }
        assertTrue(counts.getOrDefault(Fate.RIGHT, 0) > 500, counts::toString);
        assertTrue(counts.getOrDefault(Fate.LOST, 0) > 500, counts::toString);
    }

    private static double near(double passes, double distance) {
        return Math.min(Math.max(0, passes + distance), 1 - 0x1p-53);
    }

    private static List<Waveform> all(Signals signals) {
        return Stream.concat(
                        signals.dataRates().stream(),
                        Stream.of(signals.acknowledgement(), signals.call(), signals.control()))
                .toList();
    }

    /** Strong and weak, with and without impulses, crashes and other stations. */
    private static Sky sky(int trial, SplittableRandom random) {
        FadingCondition condition =
                trial % 2 == 0 ? FadingCondition.MID_LATITUDE_DISTURBED_NVIS : FadingCondition.MID_LATITUDE_MODERATE;
        ImpulsiveNoise impulses = trial % 3 == 0 ? ImpulsiveNoise.NONE : new ImpulsiveNoise(0.02, 15, 0.01);
        AtmosphericNoise crashes = trial % 3 == 2 ? new AtmosphericNoise(4, 0.1, 0.02) : AtmosphericNoise.NONE;
        EndConditions end = new EndConditions(
                random.nextDouble() * 40 - 15,
                Schedule.NONE,
                impulses,
                crashes,
                Congestion.BUSY_EVENING.populations(),
                GainControl.NONE,
                Optional.empty());
        return new Sky(
                new SkyConditions(condition.paths(), new SlowVariation(3, 45), Schedule.NONE, end, end),
                new TrialStreams(3, trial));
    }
}
