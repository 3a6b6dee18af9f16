package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.session.Cause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Read back with a library, as a spreadsheet would. */
final class TrialsCsvTest {
    @TempDir
    private Path folder = Path.of("");

    private List<CSVRecord> records() throws IOException {
        Path file = folder.resolve("trials.csv");
        new TrialsCsv(FabricatedStudy.result()).writeTo(file);
        try (Reader reader = Files.newBufferedReader(file);
                CSVParser parser = CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(reader)) {
            return parser.getRecords();
        }
    }

    @Test
    void everySessionHasALine() throws IOException {
        assertEquals(2 * 2 * FabricatedStudy.TRIALS, records().size(), "directions x modes x trials");
    }

    @Test
    void aLineHoldsWhatTheSessionCameTo() throws IOException {
        CSVRecord third = records().get(2);
        assertEquals("photo", third.get("transfer"));
        assertEquals("upload", third.get("direction"));
        assertEquals("quick", third.get("mode"));
        assertEquals("2", third.get("trial"));
        assertEquals("closed", third.get("outcome"));
        assertEquals("30.000", third.get("delivered_s"));
        assertEquals("31.000", third.get("confirmed_s"));
        assertEquals("34.000", third.get("closed_s"));
        assertEquals("15.000", third.get("first_byte_s"));
        assertEquals("50000", third.get("held_bytes"));
        assertEquals("30.000", third.get("file_2_delivered_s"));
        assertEquals("10.000", third.get("rate_2_airtime_s"), "a third of the time to delivery");
    }

    @Test
    void whatNeverHappenedIsEmpty() throws IOException {
        CSVRecord failed = records().get(97);
        assertEquals("gave_up", failed.get("outcome"));
        assertEquals("", failed.get("delivered_s"));
        assertEquals("", failed.get("file_1_delivered_s"));
    }

    @Test
    void theTimeBudgetSumsToTheElapsedTimeButForRounding() throws IOException {
        for (CSVRecord line : records()) {
            double sum = 0;
            for (Cause cause : Cause.values()) {
                sum += Double.parseDouble(line.get(cause.name().toLowerCase(java.util.Locale.ROOT) + "_s"));
            }
            assertEquals(Double.parseDouble(line.get("ended_s")), sum, 0.0005 * (Cause.values().length + 1));
        }
    }

    @Test
    void everyTimeHasItsUnitInTheHead() throws IOException {
        List<String> heads = records().get(0).getParser().getHeaderNames();
        assertTrue(
                heads.stream().filter(it -> it.contains("delivered")).allMatch(it -> it.endsWith("_s")),
                heads::toString);
    }
}
