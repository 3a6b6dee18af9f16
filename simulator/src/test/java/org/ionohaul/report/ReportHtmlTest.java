package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ReportHtmlTest {
    @TempDir
    private Path folder = Path.of("");

    private String page(int trials) throws IOException {
        Path file = folder.resolve("report.html");
        new ReportHtml(FabricatedStudy.findings(trials)).writeTo(file);
        return Files.readString(file);
    }

    @Test
    void nothingIsFetchedFromElsewhere() throws IOException {
        String page = page(100).replaceAll("(?s)<pre.*?</pre>", "");
        assertFalse(Pattern.compile("(?i)\\b(src|srcset|action|data|poster)\\s*=")
                .matcher(page)
                .find());
        assertFalse(
                Pattern.compile("(?i)href\\s*=\\s*\"(?!#|data:)").matcher(page).find());
        assertFalse(Pattern.compile("(?i)@import|url\\(|<iframe").matcher(page).find());
    }

    @Test
    void namesFromFilesAreTextAndNeverMarkup() throws IOException {
        String page = page(100);
        assertTrue(
                page.contains("roster &lt;v2> &amp; \"list\", final.txt") || page.contains("roster &lt;v2&gt; &amp; "));
        assertFalse(page.contains("<v2>"));
        assertFalse(page.contains("<Weir>"));
    }

    @Test
    void theGridComesFirstThenTheRaceAndTheCautionIsThere() throws IOException {
        String page = page(100);
        int grid = page.indexOf("<table");
        int answer = page.indexOf("12\u00a0min");
        int chart = page.indexOf("<svg");
        assertAll(
                () -> assertTrue(grid > 0 && page.startsWith("<table class=\"grid\"", grid)),
                () -> assertTrue(grid < answer && answer < page.indexOf("</table>")),
                () -> assertTrue(
                        answer < chart && page.indexOf("The race: ") < chart && chart < page.indexOf("Case by case")),
                () -> assertTrue(page.contains("never stake a life on one number")),
                () -> assertTrue(page.contains("What the model leaves out")),
                () -> assertTrue(page.contains("seed 4711")),
                () -> assertTrue(page.contains("1.2.3-test")));
    }

    @Test
    void allTwentyItemsOfTheStressGuidelinesAreFilledIn() {
        List<MethodItem> items = StressItems.of(FabricatedStudy.result(), FabricatedStudy.provenance());
        // Monks et al. 2019, table for discrete-event simulation: 3 + 5 + 4 + 3 + 4 + 1 items.
        assertEquals(20, items.size());
        items.forEach(it -> assertFalse(it.text().isBlank(), it.head()));
    }

    @Test
    void everyChartTellsThoseWhoHearItWhatItShowsAndHasItsNumbersInTables() throws IOException {
        String page = page(100);
        int charts = count(page, "class=\"picture\"");
        assertEquals(2 * 6 + 2 + 1 + 1, charts, "six a case, one a direction, the rates, one sky");
        assertEquals(
                charts,
                Pattern.compile("role=\"img\" aria-label=\"[^\"]{20,}\"")
                        .matcher(page)
                        .results()
                        .count());
        assertEquals(
                2 * 4 + 2 + 1 + 1, count(page, "<details class=\"behind\" open>"), "others have the table above them");
        assertEquals(2 * charts, count(page, "<svg"), "for phones and for more room");
    }

    /** Tough: the 50th and the 90th of 100 trials take 445 and 645 s; Quick: 500 and 900 s, and gives up on 5. */
    @Test
    void descriptionsSayWhatThePicturesShow() throws IOException {
        String page = page(100);
        String times =
                "Quick: 5 of 10 trials after 8 min 20 s, 9 of 10 after 15 min. Tough: 5 of 10 trials after 7 min 25 s, 9"
                        + " of 10 after 10 min 45 s.";
        assertEquals(2 * 2, count(page, times), "dots and lines, two cases");
        assertTrue(page.contains(
                "Quick: first byte after 4 min 10 s, through after 8 min 20 s on 5 of 10 trials; of the first"
                        + " 100 trials 5 never."));
        assertTrue(page.contains("Quick: delivered, closed 95 %, gave up 5 %."));
    }

    @Test
    void theSameStudyIsTheSamePage() throws IOException {
        assertEquals(page(100), page(100));
    }

    @Test
    void idsAreUnique() throws IOException {
        var ids = Pattern.compile(" id=\"([^\"]+)\"")
                .matcher(page(100))
                .results()
                .map(it -> it.group(1))
                .toList();
        assertTrue(ids.size() > 10);
        assertEquals(ids.size(), ids.stream().distinct().count());
    }

    @Test
    void anInterruptedStudySaysSo() throws IOException {
        assertTrue(page(40).contains("PARTIAL: interrupted after 40 of 100 trials."));
        assertFalse(page(100).contains("PARTIAL"));
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }
}
