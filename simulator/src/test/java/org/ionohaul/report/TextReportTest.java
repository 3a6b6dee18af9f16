package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected times are reckoned by hand from the rule of {@link FabricatedStudy}. */
final class TextReportTest {
    private static List<String> lines(int trials) {
        return new TextReport(FabricatedStudy.findings(trials)).lines();
    }

    @Test
    void noLineIsWiderThanATerminal() {
        lines(100).forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void theSentenceNamesTheModeThatKeepsBothDeadlinesBestWithTimesRoundedUp() {
        // Tough takes 200 + 5 i s. With 97.5 % confidence, as one of two modes, the 96th of 100 bounds the 90th of the
        // population, and the 99th the 95th: 675 s and 690 s. Tables of the binomial distribution.
        String text = String.join(" ", lines(100)).replaceAll(" +", " ");
        assertTrue(
                text.contains(
                        "Plan for 12 min with Tough (or Quick: see below): on at least 19 of 20 trials the photo is"
                                + " through by then."),
                text);
    }

    @Test
    void withTooFewTrialsToPlanByItSaysHowManyAreNeeded() {
        String text = String.join(" ", lines(40)).replaceAll(" +", " ");
        assertTrue(text.contains("too few trials were simulated to plan by: 72 are needed."), text);
    }

    @Test
    void theTablesShowQuantilesAsAClockDoesAndChancesInPercent() {
        // Quick: the 10th, 50th and 90th of 100 trials take 100, 500 and 900 s; 30 keep 300 s, 90 keep 900 s.
        List<String> rows = lines(100).stream()
                .filter(it -> it.startsWith("  Quick  ") && it.contains("%"))
                .map(it -> it.strip().replaceAll(" +", " "))
                .toList();
        assertEquals(10, rows.size(), "five tables a direction");
        assertEquals("Quick 95 % 1 min 40 s 8 min 20 s 15 min", rows.get(0));
        assertEquals("Quick 30 % 90 % 6,000", rows.get(1));
        // The first of the two files takes half of that, the second comes last.
        assertEquals("Quick 95 % 50 s 4 min 10 s 7 min 30 s", rows.get(2));
        assertEquals("Quick 95 % 1 min 40 s 8 min 20 s 15 min", rows.get(3));
    }

    @Test
    void aTableAFileNamesTheFile() {
        String text = String.join(" ", lines(100)).replaceAll(" +", " ");
        assertTrue(text.contains("How soon file 1 of 2 is delivered, gauge.jpg, 48 kB:"), text);
    }

    @Test
    void paceSaysThatItCountsBytesOnTheAir() {
        String text = String.join(" ", lines(100)).replaceAll(" +", " ");
        assertTrue(text.contains("bytes a minute chance chance on the air, 5 of 10"), text);
    }

    @Test
    void whatRangesAndQuantilesMeanIsPrinted() {
        String text = String.join(" ", lines(100));
        assertTrue(text.contains("Quantiles: the p-quantile of n trials is the smallest observed value"), text);
    }

    /** They are simulated besides, and fewer. */
    @Test
    void ofFilesOfOtherSizesItSaysOnHowManyTrialsTheyRest() {
        String text = String.join(" ", lines(40)).replaceAll(" +", " ");
        assertTrue(text.contains("are sent on each of 40 trials"), text);
    }

    @Test
    void everyCaseHasItsHeading() {
        String text = String.join(" ", lines(100));
        assertTrue(
                text.contains("from Weir Cottage to Flood Desk") && text.contains("from Flood Desk to Weir Cottage"));
    }

    @Test
    void anInterruptedStudySaysSoBeforeAnyNumber() {
        assertTrue(
                lines(40).get(1).startsWith("PARTIAL: interrupted after 40 of 100 trials."),
                lines(40).get(1));
    }
}
