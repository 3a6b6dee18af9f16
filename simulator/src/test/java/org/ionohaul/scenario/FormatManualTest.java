package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ionohaul.GoldenFile;
import org.junit.jupiter.api.Test;

/** The manuals of both formats list just the keys that the reader knows; renewed like golden files. */
final class FormatManualTest {
    private static final String BEGIN = "<!-- keys: written by FormatManualTest, don't edit -->\n";
    private static final String END = "<!-- end of keys -->\n";

    @Test
    void theManualOfScenariosListsTheirKeys() throws IOException {
        assertListed(ShippedFilesTest.SCENARIOS.resolve("README.md"), FormatManual.ofScenario());
    }

    @Test
    void theManualOfModesListsTheirKeys() throws IOException {
        assertListed(ShippedFilesTest.SCENARIOS.resolve("modes").resolve("README.md"), FormatManual.ofMode());
    }

    @Test
    void theManualOfNetsListsTheirKeys() throws IOException {
        assertListed(ShippedFilesTest.SCENARIOS.resolve("nets").resolve("README.md"), FormatManual.ofNet());
    }

    private static void assertListed(Path manual, String keys) throws IOException {
        String text = Files.readString(manual);
        String before = text.substring(0, text.indexOf(BEGIN) + BEGIN.length());
        String after = text.substring(text.indexOf(END));
        new GoldenFile(manual).assertHolds(before + keys + after);
    }
}
