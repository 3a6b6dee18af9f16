package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ionohaul.analysis.FilePromises;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** Promises of a study made up without simulating. */
final class PromiseReportTest {
    @Test
    void theDeadlineAskedForStandsAmongRoundOnesAndTheConfidenceAmongTheUsual() {
        List<String> lines = sizes(0.75);
        String text = String.join("\n", lines);
        for (String deadline : List.of("3 min", "5 min", "7 min", "9 min", "10 min", "15 min")) {
            assertTrue(lines.stream().anyMatch(line -> line.startsWith("  " + deadline + " ")), text);
        }
        assertTrue(text.contains("5 of 10") && text.contains("75 of 100") && text.contains("95 of 100"), text);
        assertTrue(lines.stream().allMatch(line -> line.length() <= 80), text);
    }

    @Test
    void theSmallPrintSaysThatSizesAndTimesAreSafe() {
        String sizes = text(sizes(0.9));
        String times = text(file(0.9));
        assertTrue(sizes.contains("Sizes are safe"), sizes);
        assertTrue(times.contains("Times are safe") && !times.contains("Sizes are safe"), times);
    }

    @Test
    void onTooFewTrialsNothingIsPromisedButTheNumberOfTrialsNeeded() {
        String sizes = text(sizes(0.99));
        String times = text(file(0.99));
        // 1 - 0.05 / 2 with two modes: ln 0.025 / ln 0.99 = 367.04.
        assertTrue(sizes.contains("368 are needed") && sizes.contains("?"), sizes);
        assertTrue(times.contains("368 are needed") && times.contains("?"), times);
    }

    /** Of each mode a picture with what may be promised by the deadline asked for, and the text's table behind it. */
    @Test
    void thePageShowsContoursOfEveryModeAndDirection() {
        StudyResult study = FabricatedStudy.result();
        ChartPage page = PromisePage.ofSizes(study, SizePromises.of(study, 540, 0.9), FabricatedStudy.provenance());
        assertEquals(4, page.charts().size(), "two modes, two directions");
        for (Chart chart : page.charts()) {
            assertTrue(chart.reading().startsWith("Within 9 min, on at least 9 of 10 trials: up to "), chart::reading);
            String svg = chart.picture().svg(520);
            assertEquals(3, svg.split("class=\"band m", -1).length - 1, svg);
            assertTrue(svg.contains("Within 9 minutes\n"), svg);
        }
        assertTrue(page.paragraphs().get(1).contains("Within 9 min promise up to "), page::reading);
    }

    @Test
    void thePageOfOneFileHasItsSentencesAndItsSafeTimes() {
        StudyResult study = FabricatedStudy.result();
        ChartPage page = PromisePage.ofFile(study, FilePromises.of(study, 0.9), FabricatedStudy.provenance());
        assertEquals(2, page.charts().size());
        assertTrue(page.paragraphs().get(1).contains("50 kB within 5 min: on at least "), page::reading);
        assertEquals("9 of 10", page.charts().get(0).table().heads().get(3).text());
    }

    private static List<String> sizes(double confidence) {
        StudyResult study = FabricatedStudy.result();
        return PromiseReport.ofSizes(study, SizePromises.of(study, 540, confidence));
    }

    private static List<String> file(double confidence) {
        StudyResult study = FabricatedStudy.result();
        return PromiseReport.ofFile(study, FilePromises.of(study, confidence));
    }

    /** Without the line breaks of a terminal. */
    private static String text(List<String> lines) {
        return String.join(" ", lines).replaceAll(" +", " ");
    }
}
