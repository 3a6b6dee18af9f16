package org.ionohaul.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;

/** The truth that the demo's log was made from, and that stands in it, is found again. */
final class DemoTruthTest {
    private static final Path SCENARIO = Path.of("../scenarios/orchard-net.toml");
    private static final Path LOG = Path.of("../scenarios/orchard-net.csv");

    static LearnedLog learned(Map<String, String> changes, Set<String> daily, double gapDb)
            throws ScenarioProblems, IOException {
        Understood understood = ScenarioReader.understand(SourceFiles.DISK, SCENARIO, changes);
        FieldLog log = FieldLogReader.read(SourceFiles.DISK, LOG, List.of("brisk-comb", "patient-climber"));
        ScenarioText text = new ScenarioText(Files.readString(SCENARIO), Map.of());
        return LearnedLog.of(understood, text, log, daily, gapDb, TrialPool.of(2))
                .orElseThrow();
    }

    private static InputChange input(LearnedLog learned, String key) {
        return learned.inputs().stream()
                .filter(it -> it.unknown().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static void assertHolds(double truth, InputChange input) {
        double low = input.written().orElseThrow().quantile(input.quantile(0.005));
        double high = input.written().orElseThrow().quantile(input.quantile(0.995));
        assertTrue(low <= truth && truth <= high, truth + " within " + low + " to " + high);
    }

    @Test
    void theTruthLiesWhereItIsBelievedToBeAndTheLevelsAreMuchSurer() throws ScenarioProblems, IOException {
        LearnedLog learned = learned(Map.of("trials", "150"), Set.of(), 0);
        assertTrue(learned.isFitted());
        // Truths as they stand in the log; of three right intervals of 99 %, one misses in 3 of 100 logs.
        assertHolds(6, input(learned, "far.snr"));
        assertHolds(14, input(learned, "near.snr"));
        assertHolds(0.4, input(learned, "sky.path.1.doppler-spread"));
        assertTrue(input(learned, "far.snr").widthLeft() < 0.3, "far");
        assertTrue(input(learned, "near.snr").widthLeft() < 0.6, "near");
        assertTrue(input(learned, "sky.path.1.doppler-spread").isUntouched());
        assertTrue(input(learned, "far.snr").shift() < -1, "noisier than guessed");
    }

    @Test
    void whereModesMayFallShortOfTheirModelsTheLevelsAreLessSure() throws ScenarioProblems, IOException {
        LearnedLog asModelled = learned(Map.of("trials", "150"), Set.of("sky.path.1.doppler-spread"), 0);
        LearnedLog learned = learned(Map.of("trials", "150"), Set.of("sky.path.1.doppler-spread"), 3);
        assertEquals(
                List.of("far.snr", "near.snr", "sky.path.1.doppler-spread", "brisk-comb", "patient-climber"),
                learned.inputs().stream().map(it -> it.unknown().key()).toList());
        assertTrue(input(learned, "sky.path.1.doppler-spread").unknown().day().isPresent());
        // A level and a gap change a run alike; just readings tell them apart, three of 2 dB.
        double far = input(learned, "far.snr").widthLeft();
        double farAsModelled = input(asModelled, "far.snr").widthLeft();
        assertTrue(far > 1.3 * farAsModelled, "far " + far + " with gaps, " + farAsModelled + " without");
        assertTrue(learned.entangled().stream()
                .anyMatch(it -> it.one().key().equals("far.snr") && it.other().isGap() && it.correlation() > 0.5));
        assertHolds(6, input(learned, "far.snr"));
    }

    @Test
    void theLevelOfTheDayIsLearnedForEachDayByItself() throws ScenarioProblems {
        Understood understood =
                ScenarioReader.understand(SourceFiles.DISK, SCENARIO, Map.of("sky.day-to-day", "0 dB ± 3 dB"));
        FieldLog log = FieldLogReader.read(
                SourceFiles.of(Map.of("runs.csv", """
                        date,mode,direction,size,outcome
                        2031-03-14,brisk-comb,upload,30 kB,delivered
                        2031-03-15,brisk-comb,upload,30 kB,delivered
                        2031-03-15,brisk-comb,upload,30 kB,delivered
                        """)), Path.of("runs.csv"), List.of("brisk-comb"));
        ScenarioModel model = new ScenarioModel(understood, new ScenarioText("", Map.of()), log.runs(), Set.of(), 0);
        List<Unknown> unknowns = model.list();
        int firstDay = unknowns.indexOf(new Unknown(
                "sky.day-to-day", false, Optional.of(Unknown.Day.of(log.runs().get(0)))));
        int secondDay = unknowns.indexOf(new Unknown(
                "sky.day-to-day", false, Optional.of(Unknown.Day.of(log.runs().get(1)))));
        assertEquals(5, unknowns.size());
        assertTrue(IntStream.of(model.unknownsOf(0)).anyMatch(it -> it == firstDay));
        assertFalse(IntStream.of(model.unknownsOf(0)).anyMatch(it -> it == secondDay));
        assertTrue(IntStream.of(model.unknownsOf(2)).anyMatch(it -> it == secondDay));
        double[] scores = new double[5];
        scores[firstDay] = 1;
        assertEquals(0.25, model.later(scores, key -> 0.25).probability("sky.day-to-day"), 1e-12, "another day");
        assertEquals(0.5, model.later(scores, key -> 0.25).probability("far.snr"), 1e-12, "the same hall");
    }
}
