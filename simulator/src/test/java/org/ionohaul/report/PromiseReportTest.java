package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Promises of a study made up without simulating. */
final class PromiseReportTest {
    @Test
    void theDeadlineAskedForStandsAmongRoundOnesAndTheConfidenceAmongTheUsual() {
        List<String> lines = new PromiseReport(FabricatedStudy.result(), 0.75).largestFiles(540);
        String text = String.join("\n", lines);
        for (String deadline : List.of("3 min", "5 min", "7 min", "9 min", "10 min", "15 min")) {
            assertTrue(lines.stream().anyMatch(line -> line.startsWith("  " + deadline + " ")), text);
        }
        assertTrue(text.contains("5 of 10") && text.contains("75 of 100") && text.contains("95 of 100"), text);
        assertTrue(lines.stream().allMatch(line -> line.length() <= 80), text);
    }

    /** To be on the safe side is to promise less by a deadline, and a later deadline for a file. */
    @Test
    void theSmallPrintSaysWhichEndIsTheSafeOne() {
        String sizes = text(new PromiseReport(FabricatedStudy.result(), 0.9).largestFiles(540));
        String times = text(new PromiseReport(FabricatedStudy.result(), 0.9).deadlines(900));
        assertTrue(sizes.contains("promise the smaller one"), sizes);
        assertTrue(times.contains("promise the later one") && !times.contains("smaller"), times);
    }

    @Test
    void aPromiseStatesItsIntervalAndTheSizeItWasReadOff() {
        String sizes = text(new PromiseReport(FabricatedStudy.result(), 0.9).largestFiles(540));
        String times = text(new PromiseReport(FabricatedStudy.result(), 0.9).deadlines(900));
        assertTrue(
                sizes.matches(".*Within 9 min up to .+ is through .+ \\(.+ - .+ with 95 % confidence\\)\\..*"), sizes);
        assertTrue(times.matches(".*900 bytes is through .+ \\(.+ - .+ with 95 % confidence\\)\\..*"), times);
        assertTrue(times.contains("Answered for 1 kB, the next larger size that is tried."), times);
        String exactly = text(new PromiseReport(FabricatedStudy.result(), 0.9).deadlines(1000));
        assertFalse(exactly.contains("Answered for"), exactly);
    }

    /** Without the line breaks of a terminal. */
    private static String text(List<String> lines) {
        return String.join(" ", lines).replaceAll(" +", " ");
    }
}
