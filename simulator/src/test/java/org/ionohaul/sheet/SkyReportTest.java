package org.ionohaul.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Table;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.TrialSkies;
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

    /** S7 is -85 dBm and S3 is -109 dBm (IARU Region 1 R.1); three decibels of noise more from the start make it -106. */
    @Test
    void levelsAreShownAsAMeterShowsThem() throws IOException, ScenarioProblems {
        String text = """
                title = "Meters"
                horizon = "10 min"
                distance = "100 km"
                modes = ["brisk-comb"]
                sky = { condition = "flat" }
                [[transfer]]
                name = "text"
                files = [{ name = "text", size = "1 kB" }]
                directions = ["upload"]
                [near]
                name = "Weir"
                signal = "S7"
                noise = "S3"
                noise-schedule = [{ at = "0 min", rise = "3 dB" }]
                station = { hang = "10 ms", relay = "15 ms", recovery = "20 ms" }
                [far]
                name = "Desk"
                snr = "12 dB"
                station = { hang = "10 ms", relay = "15 ms", recovery = "20 ms" }
                """;
        String mode = Files.readString(Path.of("../scenarios/modes/brisk-comb.toml"));
        SourceFiles files = SourceFiles.of(Map.of("meters.toml", text, "modes/brisk-comb.toml", mode));
        Scenario scenario = ScenarioReader.read(files, Path.of("meters.toml"), Map.of());
        SkyView view = SkyView.of(scenario, 0, new TrialSkies(scenario).sky(0), 600);
        assertEquals(
                List.of(List.of("Weir", "S7 (-85)", "S7 (-85)", "S7 (-85)", "S4 (-106)", "S4 (-106)")),
                SkyTables.meters(view).rows().stream().map(SkyReportTest::texts).toList());
        assertTrue(String.join("\n", new SkyText(view).lines()).contains("S7 (-85)"));
        assertTrue(String.join(" ", new SkyText(FabricatedStudy.sky()).lines()).contains("just SNRs"));
    }

    @Test
    void theStripIsALevelLineAndFitsATerminal() {
        List<String> lines = new SkyText(FabricatedStudy.sky()).lines();
        lines.forEach(line -> assertTrue(line.length() <= 80, line));
        assertEquals(
                List.of("    15 |" + "o".repeat(72), "    10 |" + "o".repeat(72)),
                lines.stream().filter(it -> it.contains("oooo")).toList());
    }

    /** Drop-outs of 40 s on average, as long apart, fall into nearly each of the 72 columns of an hour. */
    @Test
    void whatComesAndGoesHasARowOfItsOwnAndWhatIsSteadyASentence() throws ScenarioProblems {
        Path file = Path.of("..", "scenarios", "polar-hut.toml");
        Map<String, String> changes = Map.of(
                "sky.drop-outs.between", "40 s",
                "sky.drop-outs.length", "40 s",
                "sky.sporadic-e.between", "2 min",
                "sky.ground-wave.over-ground", "800.6 km",
                "near.tuning.drift", "10 Hz/min",
                "near.tuning.offset", "5 Hz");
        String told = told(ScenarioReader.read(file, changes));
        assertTrue(
                told.contains("Both hear a ground wave, -10 dB relative to the sky wave as stated, 1.0 ms\nbefore it."),
                told);
        assertTrue(told.contains("Their frequencies are 5 Hz apart at first, 605 Hz at the end."), told);
        assertTrue(told.matches("(?s).*\ndrops  \\|[.x ]{60,}\n.*\nspor\\.E \\|[.x ]{10,}\n.*"), told);
        String plain = told(ScenarioReader.read(file));
        assertTrue(
                !plain.contains("ground")
                        && !plain.contains("apart")
                        && !plain.contains("drops")
                        && !plain.contains("spor"),
                plain);
    }

    private static String told(Scenario scenario) {
        SkyView view = SkyView.of(scenario, 0, new TrialSkies(scenario).sky(0), 3600);
        return String.join("\n", new SkyText(view).lines());
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
        assertTrue(page.contains("<title>1 s after pressing send\nSNR 17 dB, eight tenths of the time 17 to 17 dB"));
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
