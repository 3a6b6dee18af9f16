package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ionohaul.analysis.Findings;
import org.ionohaul.whatif.FabricatedVariation;
import org.ionohaul.whatif.VariationCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is written is what results/README.md and the schema beside it promise. */
final class PublishedFormatsTest {
    private static final Path PUBLISHED = Path.of("../results");

    @TempDir
    private Path folder = Path.of("");

    private static String summary(int trials) throws IOException {
        return summary(FabricatedStudy.findings(trials));
    }

    static String summary(Findings findings) throws IOException {
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        new SummaryJson(findings).writeTo(stream);
        return stream.toString(StandardCharsets.UTF_8);
    }

    private static String schemaText() throws IOException {
        return Files.readString(PUBLISHED.resolve("summary.schema.json"));
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schemaText());
    }

    @Test
    void theSummaryKeepsToItsSchema() throws IOException {
        assertEquals(List.of(), schema().validate(summary(FabricatedStudy.TRIALS), InputFormat.JSON));
        assertEquals(List.of(), schema().validate(summary(1), InputFormat.JSON), "one trial, then interrupted");
    }

    @Test
    void theSchemaRefusesWhatBreaksThePromise() throws IOException {
        String summary = summary(FabricatedStudy.TRIALS);
        assertFalse(schema().validate(summary.replace("\"seed\" : 4711", "\"seed\" : \"4711\""), InputFormat.JSON)
                .isEmpty());
        assertFalse(schema().validate(summary.replace("\"delivered_share\"", "\"delivered\""), InputFormat.JSON)
                .isEmpty());
    }

    @Test
    void everyNameOfTheSummaryIsInTheSchema() throws IOException {
        String schema = schemaText();
        Set<String> names = names(summary(FabricatedStudy.TRIALS));
        assertTrue(names.size() > 50, names::toString);
        names.forEach(name -> assertTrue(schema.contains("\"" + name + "\": {"), name));
    }

    @Test
    void everyHeadOfTheTrialsIsInTheManual() throws IOException {
        Path file = folder.resolve("trials.csv");
        new TrialsCsv(FabricatedStudy.result()).writeTo(file);
        String manual = Files.readString(PUBLISHED.resolve("README.md"));
        String[] heads = Files.readAllLines(file).get(0).split(",", -1);
        assertTrue(heads.length > 25);
        for (String head : heads) {
            assertTrue(manual.contains("`" + head.replaceAll("_[2-9]_", "_1_") + "`"), head);
        }
    }

    @Test
    void everyHeadOfAVariationIsInTheManual() throws IOException {
        Path file = folder.resolve("vary.csv");
        new VariationCsv(FabricatedVariation.oneKey(3)).writeTo(file);
        String manual = Files.readString(PUBLISHED.resolve("README.md"));
        String[] heads = Files.readAllLines(file).get(0).split(",", -1);
        assertEquals("near.snr", heads[0]);
        assertTrue(heads.length > 30);
        for (int i = 1; i < heads.length; i++) {
            String head = heads[i].replaceAll("_[2-9]_", "_1_").replaceAll("_(low|high)$", "");
            assertTrue(manual.contains("`" + head + "`"), head);
        }
    }

    private static Set<String> names(String json) {
        Set<String> names = new TreeSet<>();
        collect(new JsonMapper().readTree(json), names);
        return names;
    }

    private static void collect(JsonNode node, Set<String> names) {
        names.addAll(node.propertyNames());
        node.forEach(it -> collect(it, names));
    }
}
