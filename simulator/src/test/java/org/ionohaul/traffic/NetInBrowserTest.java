package org.ionohaul.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.report.BrowserPage;
import org.ionohaul.scenario.ScenarioProblems;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page of a net as a browser shows it; skipped where there is none. */
final class NetInBrowserTest {
    @TempDir
    private Path folder = Path.of("");

    /** Pages, each with its number of pictures. */
    private enum Question {
        /** The time line. */
        ONE_NET(1) {
            @Override
            ChartPage page() throws ScenarioProblems, IOException {
                return new ValleyNet(Map.of(), 26).page();
            }
        },
        /** More stations than there are rows for names, and a name as long as names may be. */
        MANY_STATIONS(1) {
            @Override
            ChartPage page() throws ScenarioProblems, IOException {
                return new ValleyNet(
                                Map.of(
                                        "group.1.count",
                                        "90",
                                        "group.1.name",
                                        "Shelter behind the old mill",
                                        "horizon",
                                        "45 min"),
                                2)
                        .page();
            }
        },
        /** What is left behind and what waits, over the load. */
        KNEE(2) {
            @Override
            ChartPage page() throws ScenarioProblems, IOException {
                ValleyNet net = new ValleyNet(Map.of(), 26);
                NetSweep sweep = new NetSweep("load", net.points("load", "0.5", "1.25", "5"));
                return NetPage.of(sweep, List.of(0.5, 1.25, 5.0), net.provenance());
            }
        };

        private final int pictures;

        Question(int pictures) {
            this.pictures = pictures;
        }

        abstract ChartPage page() throws ScenarioProblems, IOException;
    }

    private BrowserPage open(Question question) throws IOException, ScenarioProblems {
        Path file = folder.resolve("net.html");
        question.page().writeTo(file);
        Optional<BrowserPage> page = BrowserPage.of(file);
        assumeTrue(page.isPresent(), "no Chromium on this machine: the page is not looked at in a browser");
        return page.orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void itOpensWithoutAComplaintAndNothingJutsOut(Question question) throws IOException, ScenarioProblems {
        BrowserPage page = open(question);
        assertEquals(List.of(), page.complaintsAndRequests());
        String seen = page.seen();
        for (int width : BrowserPage.WIDTHS) {
            assertTrue(seen.contains(width + " wide, needs " + width + "\n"), seen);
        }
        assertEquals(
                BrowserPage.WIDTHS.size() * question.pictures,
                seen.split("drawn 1\n", -1).length - 1,
                "widths x pictures");
        String dark = page.seenInTheDark();
        for (String fault : List.of("juts out", "overlap", "faint", "not told")) {
            assertFalse(seen.contains(fault), seen);
            assertFalse(dark.contains(fault), dark);
        }
        assertTrue(dark.contains("paper rgb(20, 24, 28)"), dark);
    }
}
