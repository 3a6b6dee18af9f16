package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.ionohaul.study.TrialRow;
import org.ionohaul.trial.ModeBench;
import org.ionohaul.trial.ModeCard;
import org.junit.jupiter.api.Test;

/** Net rate against SNR is what sessions of the same program come to. */
final class NetRatesTest {
    private static final int AT_TWELVE = NetRates.SNR_DB.indexOf(12.0);

    private static Scenario orchard() throws ScenarioProblems {
        return ScenarioReader.read(Path.of("../scenarios/orchard-net.toml"), Map.of());
    }

    private static NetRates rates() throws ScenarioProblems {
        return NetRates.of(orchard(), TrialPool.of(2)).orElseThrow();
    }

    @Test
    void whatIsInterruptedComesToNothing() throws ScenarioProblems {
        AtomicInteger asked = new AtomicInteger();
        TrialPool pool =
                new TrialPool(1, (done, of) -> {}, () -> asked.incrementAndGet() > NetRates.trialsToMeasure() - 1);
        assertEquals(Optional.empty(), NetRates.of(orchard(), pool));
    }

    /** A study of the same paths with that level stated, no slow variation, and more to send than gets through. */
    @Test
    void theyAreThoseOfAStudyWithThatLevel() throws ScenarioProblems, IOException {
        Scenario steady = read(Files.readString(Path.of("../scenarios/orchard-net.toml"))
                .replace("\"12 dB ± 4 dB\"", "\"12 dB\"")
                .replaceAll("slow-variation = .*", "")
                .replace("\"15 kB\"", "\"8 MB\"")
                .replace("[\"upload\", \"download\"]", "[\"upload\"]")
                .replaceAll("deadlines = .*", "")
                .replace("trials = 500", "trials = 4")
                .replace("\"1 h\"", "\"10 min\""));
        CaseTrials trials = StudyRunner.of(steady).run().cases().get(0);
        NetRates rates = rates();
        for (int mode = 0; mode < steady.modes().size(); mode++) {
            List<Double> studied = trials.modes().get(mode).rows().stream()
                    .map(NetRatesTest::bitsPerSecond)
                    .toList();
            assertTrue(studied.get(0) > 0, studied::toString);
            assertEquals(
                    studied, rates.modes().get(mode).points().get(AT_TWELVE).bitsPerSecond());
        }
    }

    private static Scenario read(String text) throws ScenarioProblems, IOException {
        Map<String, String> files = new HashMap<>(Map.of("orchard.toml", text));
        for (String mode : List.of("brisk-comb", "patient-climber")) {
            files.put("modes/" + mode + ".toml", Files.readString(Path.of("../scenarios/modes/" + mode + ".toml")));
        }
        return ScenarioReader.read(SourceFiles.of(files), Path.of("orchard.toml"), Map.of());
    }

    private static double bitsPerSecond(TrialRow row) {
        return 8 * row.bytesHeld() / 600.0;
    }

    /** Whatever the policy does, no mode is faster than its fastest overs back to back, and a strong signal is near them. */
    @Test
    void theyEndBelowWhatTheModesSheetSays() throws ScenarioProblems {
        for (NetRates.OfMode rates : rates().modes()) {
            double most = new ModeBench(rates.mode())
                    .card().dataRates().stream()
                            .mapToDouble(ModeCard.DataRate::netBitsPerSecond)
                            .max()
                            .orElseThrow();
            for (NetRates.Point point : rates.points()) {
                assertTrue(point.mean() <= 1.02 * most, () -> point + " of " + most);
            }
            double last = rates.points().get(rates.points().size() - 1).mean();
            assertTrue(last >= 0.8 * most, () -> last + " of " + most);
        }
    }

    /** Four trials of ten minutes each: a mean may fall by chance, by 15 % at the outside where fading is slow. */
    @Test
    void moreSignalIsNeverMuchSlower() throws ScenarioProblems {
        for (NetRates.OfMode rates : rates().modes()) {
            for (int level = 1; level < rates.points().size(); level++) {
                double before = rates.points().get(level - 1).mean();
                double after = rates.points().get(level).mean();
                assertTrue(after >= 0.85 * before, () -> rates.mode().name() + ": " + before + ", then " + after);
            }
        }
    }
}
