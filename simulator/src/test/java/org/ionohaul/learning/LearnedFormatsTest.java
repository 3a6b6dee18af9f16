package org.ionohaul.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ionohaul.placing.PublishedSchema;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;
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
    }

    @Test
    void whatWasNotFittedIsWrittenAsThat() throws IOException, ScenarioProblems {
        String json = json(DemoTruthTest.learned(Map.of("trials", "20"), Set.of(), 0));
        PublishedSchema.named("learn.schema.json").assertHolds(json);
        JsonNode root = new JsonMapper().readTree(json);
        assertFalse(root.get("is_well_founded").asBoolean());
        assertEquals(0, root.get("inputs").size());
    }
}
