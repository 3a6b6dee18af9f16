package org.ionohaul.report;

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
}
