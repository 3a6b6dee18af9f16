package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Table;
import org.ionohaul.report.FabricatedStudy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sky that does not change: what is shown of it must be what was put in. */
final class SkyReportTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void theTableSaysWhatTheSkyIs() {
        List<Cell> near = SkyTables.ends(FabricatedStudy.sky()).rows().get(0);
        List<Cell> far = SkyTables.ends(FabricatedStudy.sky()).rows().get(1);
        assertEquals(List.of("Weir Cottage", "17 dB", "17 dB", "17 dB", "0.0", "0 %", "0 %"), texts(near));
        assertEquals(List.of("Flood Desk", "11 dB", "11 dB", "11 dB", "0.0", "0 %", "0 %"), texts(far));
    }

    @Test
    void everyDataRateOfEveryModeHasItsNeed() {
        Table needs = SkyTables.needs(FabricatedStudy.sky());
        assertEquals(2 * 3, needs.rows().size(), "modes x data rates");
        needs.rows().forEach(row -> assertTrue(row.get(1).text().endsWith(" dB"), row::toString));
    }

    @Test
    void theStripIsALevelLineAndFitsATerminal() {
        List<String> lines = new SkyText(FabricatedStudy.sky()).lines();
        lines.forEach(line -> assertTrue(line.length() <= 80, line));
        assertEquals(
                List.of("    15 |" + "o".repeat(72), "    10 |" + "o".repeat(72)),
                lines.stream().filter(it -> it.contains("oooo")).toList());
    }

    @Test
    void theSamplesCanBeReadBack() throws IOException {
        Path file = folder.resolve("sky.csv");
        new SkyCsv(FabricatedStudy.sky()).writeTo(file);
        try (Reader reader = Files.newBufferedReader(file)) {
            List<CSVRecord> samples = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
            assertEquals(2 * 600, samples.size(), "a sample a second and end");
            assertEquals("17.00", samples.get(0).get("sinr_db"));
            assertEquals("599.000", samples.get(599).get("time_s"));
            assertEquals("far", samples.get(600).get("end"));
            assertEquals("11.00", samples.get(600).get("signal_db"));
        }
    }

    @Test
    void thePictureShowsTheSkyOfBothEnds() throws IOException {
        Path file = folder.resolve("sky.html");
        SkyPage.of(FabricatedStudy.sky(), "1.2.3-test").writeTo(file);
        String page = Files.readString(file);
        assertTrue(page.contains(
                "\"says\":[\"0:01 after pressing send\\nSNR 17 dB, eight tenths of the time 17 to 17 dB"));
        assertTrue(page.contains("SNR 11 dB, eight tenths of the time 11 to 11 dB"));
        assertTrue(page.contains(
                "aria-label=\"At Weir Cottage, hearing Flood Desk: SNR over time, half of it above 17 dB, nine"
                        + " tenths above 17 dB; others on the air 0 % of the time. At Flood Desk"));
        assertTrue(page.contains("1.2.3-test with seed 4711, trial 3"));
    }

    private static List<String> texts(List<Cell> row) {
        return row.stream().map(Cell::text).toList();
    }
}
