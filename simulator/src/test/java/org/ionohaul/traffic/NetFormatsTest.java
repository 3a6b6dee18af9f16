package org.ionohaul.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.placing.PublishedSchema;
import org.ionohaul.scenario.ScenarioProblems;
import org.junit.jupiter.api.Test;

/** What is written of a net is what results/README.md and the schema beside it promise. */
final class NetFormatsTest {
    private static final int TRIALS = 26;
    private static final Map<String, String> BRIEF = Map.of("horizon", "45 min", "group.1.count", "5");

    private static String json(String key, ValleyNet net, List<NetPoint> points) throws IOException {
        return PublishedSchema.written(new NetJson(key, points, net.provenance(), net.trials()));
    }

    @Test
    void theJsonKeepsToItsSchemaAndEveryNameIsInIt() throws IOException, ScenarioProblems {
        PublishedSchema schema = PublishedSchema.named("net.schema.json");
        ValleyNet net = new ValleyNet(BRIEF, TRIALS);
        String json = json("load", net, net.points("load", "1", "2"));
        schema.assertHolds(json);
        schema.assertRefuses(json.replace("\"piles_up\"", "\"maybe\"").replace("\"keeps_up\"", "\"maybe\""));
        schema.assertRefuses(json.replace("\"refused_per_trial\"", "\"refused\""));
        assertTrue(json.contains("\"key\" : \"horizon\""), json);
        ValleyNet brief = new ValleyNet(BRIEF, 2);
        schema.assertHolds(json("", brief, List.of(new NetPoint("", brief.findings()))));
    }

    @Test
    void everyHeadAndMeasureOfTheTableIsInTheManual() throws IOException, ScenarioProblems {
        String manual = Files.readString(Path.of("../results/README.md"));
        ValleyNet net = new ValleyNet(BRIEF, TRIALS);
        List<String> lines = PublishedSchema.written(new NetCsv("load", net.points("load", "1", "2")))
                .lines()
                .toList();
        String[] heads = lines.get(0).split(",", -1);
        assertEquals(9, heads.length);
        for (String head : heads) {
            assertTrue(manual.contains("`" + head + "`"), head);
        }
        assertTrue(lines.size() > 2 * 4 * 8);
        for (String line : lines.subList(1, lines.size())) {
            String measure = line.split(",", -1)[4].replaceAll("within_\\d+_s", "within_N_s");
            assertTrue(manual.contains("`" + measure + "`"), measure);
            assertEquals(heads.length, line.split(",", -1).length, line);
        }
    }
}
