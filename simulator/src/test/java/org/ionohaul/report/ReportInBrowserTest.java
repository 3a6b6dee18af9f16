package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.PageFile;
import org.ionohaul.rendering.PageScript;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as a browser shows it; skipped where there is none, which the test run says. */
final class ReportInBrowserTest {
    private static final int RACES = 2;
    private static final int CHARTS = RACES + 2 * 5 + 2 + 1 + 1;

    @TempDir
    private Path folder = Path.of("");

    private Optional<BrowserPage> found = Optional.empty();
    private Path page = Path.of("");

    @BeforeEach
    void writeTheReport() throws IOException {
        page = folder.resolve("report.html");
        found = BrowserPage.of(page);
        assumeTrue(found.isPresent(), "no Chromium on this machine: the report is not looked at in a browser");
        new ReportHtml(FabricatedStudy.findings(FabricatedStudy.TRIALS)).writeTo(page);
    }

    @Test
    void itOpensWithoutAComplaintAndAsksForNothingElse() throws IOException {
        assertEquals(List.of(), shown().complaintsAndRequests());
    }

    @Test
    void complaintsAndRequestsWouldBeNoticed() throws IOException {
        Path talkative = folder.resolve("talkative.html");
        Files.writeString(talkative, "<script>nonsense()</script><img src='http://127.0.0.1:9/dot.png' alt=''>");
        List<String> noticed = new BrowserPage(shown().browser(), talkative).complaintsAndRequests();
        assertEquals(2, noticed.size(), noticed::toString);
        assertTrue(noticed.get(0).contains("nonsense is not defined"), noticed.get(0));
        assertEquals("http://127.0.0.1:9/dot.png", noticed.get(1));
    }

    @Test
    void nothingJutsOutOrOverlapsAtAnyWidth() throws IOException {
        String seen = shown().seen();
        for (int width : BrowserPage.WIDTHS) {
            assertTrue(seen.contains(width + " wide, needs " + width + "\n"), seen);
        }
        assertEquals(4 * CHARTS, count(seen, "drawn 1\n"), "of two drawings that which suits the width");
        for (String fault : List.of("juts out", "overlap", "cut off", "crossed by")) {
            assertFalse(seen.contains(fault), seen);
        }
    }

    @Test
    void thoseWhoPointAreToldTheNumbers() throws IOException {
        String seen = shown().seen();
        assertEquals(
                4 * 2,
                count(seen, "told: Through within 0 s\nQuick: 0 % (0-4 %)\nTough: 0 % (0-4 %)\n"),
                "what a pointer at the left end of the lines is told; Wilson's interval for none of 100 is 0 to 3.7 %");
        assertFalse(seen.contains("not told"), seen);
    }

    @Test
    void textStandsOutFromItsGroundInLightAndInDark() throws IOException {
        String light = shown().seen();
        assertTrue(light.contains("paper rgb(255, 255, 255)"), light);
        assertFalse(light.contains("faint"), light);
        String dark = shown().seenInTheDark();
        assertTrue(dark.contains("paper rgb(20, 24, 28)"), dark);
        assertFalse(dark.contains("faint"), dark);
    }

    /** Two races and, for two cases each, lines; two size charts; and the rates. */
    @Test
    void everyPictureColoursModesByName() throws IOException {
        assertEquals(4 * (2 + 2 + 2 + 1), count(shown().seen(), " colours Quick #0072b2, Tough #d55e00\n"));
    }

    @Test
    void theOrderOfTheScenarioDoesNotMatterForColours() throws IOException {
        CaseTrials trials = FabricatedStudy.result().cases().get(0);
        List<ModeTrials> reversed =
                List.of(trials.modes().get(1), trials.modes().get(0));
        Chart chart = new Chart(
                "reversed",
                "Reversed",
                "",
                "",
                CompletionChart.of(new TimeScale(900), List.of(), reversed),
                Table.NONE);
        try (Writer writer = Files.newBufferedWriter(page)) {
            PageFile.write(
                    "charts.jte",
                    new ChartPage("reversed.html", "Reversed", "", List.of(), List.of(chart), ""),
                    writer);
        }
        String seen = shown().seen();
        assertEquals(4, count(seen, "reversed colours Quick #0072b2, Tough #d55e00\n"), seen);
    }

    @Test
    void tablesAreFolded() {
        String dom = shown().dom();
        assertEquals(0, count(dom, "<details class=\"behind\" open"));
        assertEquals(0, count(dom, "<details class=\"fold\" open"), "below the grid and the first race");
    }

    /** As in the preview of a mail program, which takes scripts away. */
    @Test
    void withoutItsScriptThePageShowsItsPicturesAndItsTables() throws IOException {
        Files.writeString(page, Files.readString(page).replace(PageScript.text(), ""));
        String dom = shown().dom();
        assertEquals(2 * CHARTS, count(dom, "<svg"), "for phones and for more room");
        assertEquals(2 * 4 + 2 + 1 + 1, count(dom, "<details class=\"behind\" open"));
        assertEquals(count(dom, "<details class=\"fold\""), count(dom, "<details class=\"fold\" open"));
        assertEquals(4 * CHARTS, count(shown().seen(), "drawn 1\n"), "and they are seen");
    }

    /** Well below the 1.6 MB that a page of the demo's size had with a charting library in it. */
    @Test
    void thePageIsSmall() throws IOException {
        assertTrue(Files.size(page) < 400_000, Files.size(page) + " bytes");
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void itPrintsWhatIsUnfoldedOnTwoPages() throws IOException {
        String printed = shown().printed();
        assertTrue(printed.startsWith("%PDF-"));
        assertEquals(2, printed.split("/Type /Page\\b", -1).length - 1, "pages");
    }

    private BrowserPage shown() {
        return found.orElseThrow();
    }
}
