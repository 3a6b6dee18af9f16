package org.ionohaul.onair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ionohaul.report.BrowserPage;
import org.ionohaul.scenario.ScenarioProblems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on runs as a browser shows it; skipped where there is none. */
final class RunsInBrowserTest {
    private static final int PICTURES = 3;

    @TempDir
    private Path folder = Path.of("");

    private BrowserPage open() throws IOException, ScenarioProblems {
        Path file = folder.resolve("runs.html");
        RunsPage.of(FabricatedRuns.answer(30, 250, 750)).writeTo(file);
        Optional<BrowserPage> page = BrowserPage.of(file);
        assumeTrue(page.isPresent(), "no Chromium on this machine: the page is not looked at in a browser");
        return page.orElseThrow();
    }

    @Test
    void itOpensWithoutAComplaintAndAsksForNothingElse() throws IOException, ScenarioProblems {
        assertEquals(List.of(), open().complaintsAndRequests());
    }

    @Test
    void nothingJutsOutAtAnyWidth() throws IOException, ScenarioProblems {
        String seen = open().seen();
        for (int width : BrowserPage.WIDTHS) {
            assertTrue(seen.contains(width + " wide, needs " + width + "\n"), seen);
        }
        assertEquals(BrowserPage.WIDTHS.size() * PICTURES, seen.split("drawn 1\n", -1).length - 1, "widths x pictures");
        assertFalse(seen.contains("juts out"), seen);
        assertFalse(seen.contains("overlap"), seen);
        assertFalse(seen.contains("faint"), seen);
        String dark = open().seenInTheDark();
        assertTrue(dark.contains("paper rgb(20, 24, 28)"), dark);
        assertFalse(dark.contains("faint"), dark);
    }
}
