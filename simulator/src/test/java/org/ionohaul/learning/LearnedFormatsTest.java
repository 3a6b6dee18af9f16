package org.ionohaul.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ionohaul.fieldlog.FieldLog;
import org.ionohaul.fieldlog.FieldLogReader;
import org.ionohaul.placing.PublishedSchema;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrittenInput;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is written of what was learned. */
final class LearnedFormatsTest {
    private static final Provenance PROVENANCE = new Provenance("test", List.of(), Map.of());

    private static String json(LearnedLog learned) throws IOException {
        return PublishedSchema.written(new LearnedJson(learned, PROVENANCE));
    }

    @Test
    void theJsonKeepsToItsSchemaWithDailyInputsAndGaps() throws IOException, ScenarioProblems {
        PublishedSchema schema = PublishedSchema.named("learn.schema.json");
        LearnedLog learned = DemoTruthTest.learned(Map.of("trials", "150"), Set.of("sky.path.1.doppler-spread"), 3);
        String json = json(learned);
        schema.assertHolds(json);
        schema.assertRefuses(json.replace("\"width_left\"", "\"width\""));
        JsonNode root = new JsonMapper().readTree(json);
        assertEquals(8, root.get("logged_runs").asInt());
        JsonNode far = root.get("inputs").get(0);
        assertEquals("far.snr", far.get("key").asString());
        // The scenario says 12 dB ± 4 dB, cut off at 3 deviations: of what is within, nine tenths lie below the
        // quantile of
        // 0.9 (1 - 2 x 0.00135) + 0.00135, which is 1.2754 deviations above the mean (table of the normal
        // distribution).
        assertEquals(12, far.get("before").get("median").asDouble(), 1e-9);
        assertEquals(12 + 1.2754 * 4, far.get("before").get("ninth").asDouble(), 1e-3);
        assertTrue(far.get("after").get("median").asDouble() < 9);
        assertEquals("2031-03-14", root.get("inputs").get(2).get("date").asString());
        assertTrue(root.get("inputs").get(3).get("is_gap").asBoolean());
        assertEquals(2 * 2, root.get("forecasts").size(), "two ways, two modes");
        assertPictures(
                PublishedSchema.written(LearnedPage.of(learned, PROVENANCE)).replace('\u00a0', ' '));
    }

    private static void assertPictures(String page) {
        for (String kind : List.of("at350", "at520")) {
            for (int input = 0; input < 5; input++) {
                String svg = PublishedSchema.picture(page, "input-" + input, kind);
                assertEquals(30, svg.split("<rect class=\"open\"", -1).length - 1, "thirty cells");
                assertTrue(svg.contains("after the log"), svg);
            }
            String forecast = PublishedSchema.picture(page, "forecast-list-upload", kind);
            assertTrue(forecast.contains("Brisk comb, before") && forecast.contains("Brisk comb, after"), forecast);
            assertTrue(forecast.contains("10 min"), "the deadline");
        }
        assertTrue(page.contains("SNR at Parish Hall: 12.0 dB before"), "the title says the finding");
    }

    @Test
    void aListIsDrawnValueByValueAndATimeOfDayIsToldByTheClock() throws IOException, ScenarioProblems {
        Path file = Path.of("../scenarios/unknown-evening.toml");
        Understood understood = ScenarioReader.understand(
                SourceFiles.DISK, file, Map.of("trials", "120", "modes", "[\"patient-climber\"]"));
        FieldLog log = FieldLogReader.read(
                SourceFiles.of(Map.of("runs.csv", """
                        mode;direction;size;outcome;session-time
                        patient-climber;upload;30 kB;delivered;12,5 min
                        """)), Path.of("runs.csv"), List.of("patient-climber"));
        ScenarioText scenario = new ScenarioText(Files.readString(file), Map.of());
        LearnedLog learned = LearnedLog.of(understood, scenario, log, Set.of(), 0, TrialPool.of(2))
                .orElseThrow();
        assertTrue(learned.isFitted());
        String page =
                PublishedSchema.written(LearnedPage.of(learned, PROVENANCE)).replace('\u00a0', ' ');
        String lights = PublishedSchema.picture(page, "input-0", "at520");
        assertTrue(lights.contains(">19:10<") && !lights.contains("midnight"), lights);
        String list = PublishedSchema.picture(page, "input-3", "at520");
        assertEquals(2, list.split("<rect class=\"open\"", -1).length - 1, "two values");
        assertTrue(list.contains(">14 dB<") && list.contains(">8 dB<"), list);
        String text = String.join("\n", new LearnedText(learned).lines());
        assertTrue(text.contains("19:03:37 to 19:16:23"), text);
        // A third of the weight lies on 14 dB.
        assertTrue(text.contains("14 dB 33 %, 8 dB 67 %"), text);
        JsonNode first = new JsonMapper().readTree(json(learned)).get("inputs").get(0);
        assertEquals(WrittenInput.CLOCK, first.get("unit").asString());
        assertEquals(19 * 60 + 10, first.get("before").get("median").asDouble(), 1e-9);
    }

    @Test
    void whatWasNotFittedIsWrittenAsThat() throws IOException, ScenarioProblems {
        LearnedLog learned = DemoTruthTest.learned(Map.of("trials", "20"), Set.of(), 0);
        String json = json(learned);
        PublishedSchema.named("learn.schema.json").assertHolds(json);
        JsonNode root = new JsonMapper().readTree(json);
        assertFalse(root.get("is_well_founded").asBoolean());
        assertEquals(0, root.get("inputs").size());
        String page =
                PublishedSchema.written(LearnedPage.of(learned, PROVENANCE)).replace('\u00a0', ' ');
        assertTrue(page.contains("Too little was simulated"), page);
        assertFalse(page.contains("<svg"), "nothing is shown");
    }
}
