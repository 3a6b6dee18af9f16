package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.analysis.Besides;
import org.ionohaul.analysis.Findings;
import org.ionohaul.analysis.NetRates;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.StudyResult;
import org.ionohaul.study.StudyRunner;
import org.ionohaul.study.TrialPool;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report of a scenario whose every name is a piece of page, as a browser shows it; skipped where there is none. */
final class HostileNamesInBrowserTest {
    private static final Path FILE = Path.of("hostile.toml");
    private static final Path SHIPPED = Path.of("../scenarios");
    private static final String ELEMENT = "<img src='http://127.0.0.1:9/x.png' onerror='nonsense()' id='owned'>";

    @TempDir
    private Path folder = Path.of("");

    private Optional<BrowserPage> found = Optional.empty();

    @BeforeEach
    void writeTheReport() throws IOException, ScenarioProblems {
        Path page = folder.resolve("report.html");
        found = BrowserPage.of(page);
        assumeTrue(found.isPresent(), "no Chromium on this machine: the report is not looked at in a browser");
        SourceFiles files = SourceFiles.of(Map.of(
                FILE.toString(),
                text("river-watch.toml"),
                "modes/brisk-comb.toml",
                text("modes/brisk-comb.toml"),
                "modes/patient-climber.toml",
                text("modes/patient-climber.toml")));
        Map<String, String> hostile = Map.of(
                "trials",
                "12",
                "modes",
                "[\"brisk-comb\", \"patient-climber\"]",
                "title",
                "</title></script><script>nonsense()</script>" + ELEMENT,
                "near.name",
                ELEMENT,
                "far.name",
                "</script><script>nonsense()</script>",
                "transfer.1.name",
                ELEMENT,
                "transfer.1.files.1.name",
                "${7*7}" + ELEMENT,
                "modes.brisk-comb.title",
                "\"'--></script>" + ELEMENT,
                "modes.patient-climber.title",
                "<script>nonsense()</script>&lt;");
        Scenario scenario = ScenarioReader.read(files, FILE, hostile);
        StudyResult result = StudyRunner.of(scenario).run();
        Besides rates = new Besides(Optional.empty(), NetRates.of(scenario, TrialPool.of(2)), false);
        new ReportHtml(Findings.of(
                        result, StudySummary.of(result), rates, ScenarioReader.provenance(files, FILE, hostile)))
                .writeTo(page);
    }

    private static String text(String name) throws IOException {
        return Files.readString(SHIPPED.resolve(name));
    }

    @Test
    @DisplayName("no name becomes an element, runs as a script or makes the page ask for anything")
    void namesStayText() throws IOException {
        BrowserPage shown = found.orElseThrow();
        assertEquals(List.of(), shown.complaintsAndRequests());
        String dom = shown.dom();
        assertFalse(dom.contains("<img src=\"http"), "an element");
        assertTrue(dom.contains("&lt;img src='http") || dom.contains("&lt;img src=&#39;http"), "the name as text");
    }

    @Test
    @DisplayName("what a pointer is told in a picture shows a mode's name as it is written")
    void namesStayTextInPictures() throws IOException {
        String seen = found.orElseThrow().seen();
        assertTrue(seen.contains("told: "), seen);
        assertTrue(seen.contains("&lt;script&gt;nonsense()&lt;/script&gt;&amp;lt;"), seen);
    }
}
