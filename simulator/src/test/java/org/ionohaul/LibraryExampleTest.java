package org.ionohaul;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.ionohaul.analysis.Findings;
import org.ionohaul.report.SummaryJson;
import org.ionohaul.report.TextReport;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The program as a library, as DEVELOPERS.md shows it: a scenario from texts, run, analysed and rendered to a stream. */
final class LibraryExampleTest {
    @Test
    @DisplayName("a scenario held in memory is run, analysed and rendered without files or command line")
    void aScenarioInMemoryBecomesAReport() throws ScenarioProblems, IOException {
        // example: begin
        SourceFiles files = SourceFiles.of(Map.of("watch.toml", scenarioText(), "modes/brisk-comb.toml", modeText()));
        Path file = Path.of("watch.toml");
        Map<String, String> changes = Map.of("modes", "[\"brisk-comb\"]", "trials", "40", "far.snr", "12 dB");

        Scenario scenario = ScenarioReader.read(files, file, changes);
        StudyResult result = StudyRunner.of(scenario).run();
        Provenance provenance = ScenarioReader.provenance(files, file, changes);
        Findings findings = Findings.of(result, provenance);

        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        new SummaryJson(findings).writeTo(stream);
        String headline = new TextReport(findings).lines().get(0);
        // example: end

        assertEquals(scenario.title(), headline);
        assertTrue(stream.toString(StandardCharsets.UTF_8).contains("\"trials_done\" : 40"), stream::toString);
        assertEquals("modes/brisk-comb.toml", provenance.inputs().get(1).name());
    }

    @Test
    @DisplayName("the example in DEVELOPERS.md is the one that is compiled here")
    void theGuideShowsThisExample() throws IOException {
        String here = Files.readString(Path.of("src/test/java/org/ionohaul/LibraryExampleTest.java"));
        String example = here.substring(here.indexOf("// example: begin") + 18, here.indexOf("        // example: end"))
                .replaceAll("(?m)^ {4}(?=\\S| )", "")
                .strip();
        assertTrue(Files.readString(Path.of("../DEVELOPERS.md")).contains(example), example);
    }

    private static String scenarioText() throws IOException {
        return Files.readString(Path.of("../scenarios/river-watch.toml"));
    }

    private static String modeText() throws IOException {
        return Files.readString(Path.of("../scenarios/modes/brisk-comb.toml"));
    }
}
