package org.ionohaul.onair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.StudyProgress;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is told and written of runs on the air. */
final class RunsFormatsTest {
    private static final Path PUBLISHED = Path.of("../results");

    private static String written(ResultFolder.Text file) throws IOException {
        StringWriter text = new StringWriter();
        file.writeTo(text);
        return text.toString();
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(PUBLISHED.resolve("runs.schema.json")));
    }

    @Test
    void theJsonKeepsToItsSchemaAndEveryNameIsInIt() throws IOException, ScenarioProblems {
        String json = written(new RunsJson(FabricatedRuns.answer(30, 250, 750)));
        assertEquals(List.of(), schema().validate(json, InputFormat.JSON));
        assertEquals(
                List.of(),
                schema().validate(written(new RunsJson(FabricatedRuns.answer(2, 300, 300))), InputFormat.JSON));
        assertFalse(schema().validate(json.replace("\"is_better\"", "\"better\""), InputFormat.JSON)
                .isEmpty());
        String schemaText = Files.readString(PUBLISHED.resolve("runs.schema.json"));
        Set<String> names = new TreeSet<>();
        collect(new JsonMapper().readTree(json), names);
        assertTrue(names.size() > 40, names::toString);
        names.forEach(name -> assertTrue(schemaText.contains("\"" + name + "\": {"), name));
    }

    private static void collect(JsonNode node, Set<String> names) {
        names.addAll(node.propertyNames());
        node.forEach(it -> collect(it, names));
    }

    @Test
    void everyHeadOfTheTableIsInTheManualAndRowsFit() throws IOException, ScenarioProblems {
        String manual = Files.readString(PUBLISHED.resolve("README.md"));
        for (RunAnswer answer : List.of(FabricatedRuns.answer(30, 250, 750), FabricatedRuns.answer(2, 300, 300))) {
            List<String> lines = written(new RunsCsv(answer)).lines().toList();
            String[] heads = lines.get(0).split(",", -1);
            for (String head : heads) {
                assertTrue(manual.contains("`" + head.replaceAll("_(low|high)$", "") + "`"), head);
            }
            assertEquals(1 + 3 * answer.findings().designs().size(), lines.size());
            lines.forEach(it -> assertEquals(heads.length, it.split(",", -1).length, it));
        }
    }

    @Test
    void theTextFitsATerminalAndSaysTheTruthFirst() throws ScenarioProblems {
        RunAnswer answer = FabricatedRuns.answer(30, 250, 750);
        List<String> lines = new RunsText(answer).lines();
        lines.forEach(it -> assertTrue(it.length() <= 80, it));
        String better = answer.findings().question().modes().get(0).title();
        assertTrue(String.join(" ", lines).contains("Truly better at 18:00: " + better), lines::toString);
    }

    @Test
    void thePageHoldsAPictureForEachRule() throws IOException, ScenarioProblems {
        String page = written(RunsPage.of(FabricatedRuns.answer(30, 250, 750)));
        assertEquals(3, page.split("class=\"picture\"", -1).length - 1);
        assertTrue(page.contains("A B B A A B"));
    }

    @Test
    void threeModesAreToldAsWell() throws ScenarioProblems {
        RunAnswer answer = FabricatedRuns.answer(20, 0, 100, 400, 400);
        List<String> lines = new RunsText(answer).lines();
        lines.forEach(it -> assertTrue(it.length() <= 80, it));
        String text = String.join("\n", lines);
        assertTrue(text.contains("A A A B B B C C C"), text);
        assertTrue(text.contains("C B A C B A C B A"), text);
        assertFalse(text.contains("Stopping early"), "stopping early is for two modes");
    }

    /** Interrupted after the second of five comparisons: what is told is that of the first two, and says so. */
    @Test
    void whatIsDoneWhenInterruptedIsTold() throws ScenarioProblems {
        RunQuestion question = FabricatedRuns.answer(5, 250, 750).findings().question();
        List<Truth> truths = FabricatedRuns.answer(2, 250, 750).findings().truths();
        boolean[] isOver = new boolean[1];
        StudyProgress afterTwo = (done, asked) -> isOver[0] = done == 2;
        RunFindings findings = RunFindings.of(question, truths, new TrialPool(1, afterTwo, () -> isOver[0]))
                .orElseThrow();
        assertTrue(findings.isPartial());
        assertEquals(2, findings.trialsDone());
        RunAnswer answer =
                RunAnswer.of(findings, 0, 10800, FabricatedRuns.answer(2, 1, 2).provenance());
        assertTrue(new RunsText(answer).lines().get(1).startsWith("PARTIAL: interrupted after 2 of 5 comparisons."));
        assertEquals(FabricatedRuns.answer(2, 250, 750).findings().isPartial(), false, "two of two are not partial");
    }
}
