package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.channel.End;
import org.ionohaul.channel.MeasuredLevel;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A series of readings in place of a level that is stated, as a scenario names it. */
final class MeasuredSkyTest {
    private final Path folder;

    MeasuredSkyTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** Send is pressed at 18:00, watched for an hour. */
    private WrittenScenario measured(String csv) {
        write("evening.csv", csv);
        return WrittenScenario.in(folder)
                .replacing("[far]", "snr = \"11 dB\"\n", "readings = { file = \"evening.csv\" }\n");
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static MeasuredLevel level(SkyConditions sky, End end) {
        return sky.at(end).measured().orElseThrow();
    }

    private static SkyConditions middle(WrittenScenario scenario) throws ScenarioProblems {
        return scenario.read().sky().conditions(key -> 0.5);
    }

    private static List<String> problems(WrittenScenario scenario) {
        return scenario.problems().stream().map(Problem::text).toList();
    }

    @Test
    void aTableWithSemicolonsAndDecimalCommasIsReadAsASpreadsheetWritesIt() throws ScenarioProblems {
        SkyConditions sky = middle(measured("""
                \uFEFF# invented
                Time;SNR (dB);Remarks
                17:30;12,5;
                18:00;12;
                18:30;;nobody there
                19:10;"9,5 dB";lamps, on
                """));
        assertEquals(12, sky.at(End.FAR).snrDb(), 1e-12);
        assertEquals(
                List.of(new Schedule.Point(-1800, 0.5), new Schedule.Point(0, 0), new Schedule.Point(4200, -2.5)),
                level(sky, End.FAR).changeDb().points());
        assertEquals(60, level(sky, End.FAR).averageSeconds());
        assertTrue(sky.at(End.NEAR).measured().isEmpty(), "an SNR says nothing of the other end");
    }

    @Test
    void timesMayBeAfterSendOrByDayAndGoPastMidnight() throws ScenarioProblems {
        assertEquals(List.of(0.0, 600.0), times("time,snr dB\n0 min,1\n10 min,1\n"));
        assertEquals(List.of(-1800.0, 1815.0), times("time,snr dB\n2031-03-14 17:30,1\n2031-03-14T18:30:15,1\n"));
        assertEquals(List.of(-120.0, 6.5 * 3600), times("time,snr dB\n17:58,1\n00:30,1\n"));
        assertEquals(List.of(-120.0, 6.5 * 3600), times("time,snr dB\n14.3.2031 17:58,1\n15.3.2031 00:30,1\n"));
    }

    @Test
    void anEveningThatBeganBeforeMidnightIsTheOneOfPressingSend() throws ScenarioProblems {
        WrittenScenario scenario = measured("time,snr dB\n22:00,1\n23:30,2\n00:30,3\n01:30,3\n")
                .replacing("", "clock = \"18:00\"", "clock = \"00:00\"");
        assertEquals(
                List.of(-7200.0, -1800.0, 1800.0, 5400.0),
                level(middle(scenario), End.FAR).changeDb().points().stream()
                        .map(Schedule.Point::atSeconds)
                        .toList());
    }

    private List<Double> times(String csv) throws ScenarioProblems {
        return level(middle(measured(csv)), End.FAR).changeDb().points().stream()
                .map(Schedule.Point::atSeconds)
                .toList();
    }

    @Test
    void readingsThatAreNearerTogetherThanTheirAverageAreAveragedAsPowers() throws ScenarioProblems {
        SkyConditions sky = middle(measured("""
                time,snr dB
                18:00:00,10
                18:00:20,0
                18:00:40,10
                18:01:00,3
                18:59:00,3
                """));
        // (10 + 1 + 10) / 3 = 7, in the middle of their times, of which the level at send is the one before.
        assertEquals(10 * Math.log10(7), sky.at(End.FAR).snrDb(), 1e-9);
        assertEquals(20, level(sky, End.FAR).changeDb().points().get(0).atSeconds(), 1e-9);
    }

    @Test
    void aSignalMovesBothEndsAndStandsOverTheNoiseStatedOrRead() throws ScenarioProblems {
        WrittenScenario scenario = measured("time,signal,noise dBm\n18:00,S7,-103\n18:50,S6,-100\n");
        SkyConditions sky = middle(scenario);
        // S7 is -85 dBm (IARU Region 1 R.1).
        assertEquals(18, sky.at(End.FAR).snrDb(), 1e-9);
        assertEquals(3, sky.at(End.FAR).noiseRiseDb().levelDb(3000), 1e-9);
        assertEquals(-6, level(sky, End.NEAR).changeDb().levelDb(3000), 1e-9, "a path takes the same both ways");
        assertEquals(14, sky.at(End.NEAR).snrDb(), 1e-9, "which has a level of its own");
        assertEquals(
                -85,
                scenario.read().sky().levels(End.FAR, key -> 0.5).orElseThrow().signalDbm(),
                1e-9);
        WrittenScenario ownTrend = scenario.with("[[sky.trend]]", "at = '20 min'\nrise = '1 dB'");
        assertTrue(middle(ownTrend).at(End.NEAR).measured().isEmpty());
        WrittenScenario stated = measured("time,signal\n18:00,S7\n18:50,S6\n")
                .replacing("[far]", "readings", "noise = \"-100 dBm\"\nreadings");
        assertEquals(15, middle(stated).at(End.FAR).snrDb(), 1e-9);
    }

    @Test
    void noiseAloneLeavesTheSignalAsStated() throws ScenarioProblems {
        SkyConditions sky = middle(measured("time,noise dBm\n18:00,-103\n18:50,-93\n")
                .replacing("[far]", "readings", "signal = \"S7\"\nreadings"));
        assertEquals(18, sky.at(End.FAR).snrDb(), 1e-9);
        assertEquals(10, sky.at(End.FAR).noiseRiseDb().levelDb(3000), 1e-9);
        assertTrue(sky.at(End.FAR).measured().isEmpty());
    }

    @Test
    void theMetersErrorIsDrawnLikeOtherInputs() throws ScenarioProblems {
        Scenario scenario = measured("time,snr dB\n18:00,10\n18:50,10\n")
                .replacing("[far]", "evening.csv\"", "evening.csv\", meter-error = \"0 dB .. 4 dB\"")
                .read();
        assertEquals(List.of("far.readings.meter-error"), scenario.sky().uncertainKeys());
        assertEquals(9, scenario.sky().conditions(key -> 0.25).at(End.FAR).snrDb(), 1e-9);
    }

    @Test
    void everythingWrongIsToldAtOnceWithItsPlace() {
        List<String> told = problems(measured("""
                time,snr
                18:00,S7
                18:05,12
                18:04,x dB
                25:00,3 dB
                """));
        assertEquals(5, told.size(), told.toString());
        String file = folder.resolve("evening.csv").toString();
        assertTrue(told.get(0).startsWith(file + ":2:7: snr: "), told.get(0));
        assertTrue(told.get(1).startsWith(file + ":3:7: snr: "), told.get(1));
        assertTrue(told.get(2).startsWith(file + ":4:1: time: "), told.get(2));
        assertTrue(told.get(3).startsWith(file + ":4:7: snr: "), told.get(3));
        assertTrue(told.get(4).startsWith(file + ":5:1: time: "), told.get(4));
        assertTrue(problems(measured("time,snr,level\n")).get(0).contains("holds no reading"));
        assertTrue(problems(measured("time,snr,levl\n18:00,3 dB,1\n")).get(0).contains("there is no column \"levl\""));
        assertTrue(problems(measured("time,snr dB\n18:00,3\n18:00,3\n"))
                .get(0)
                .contains("not later than the line before"));
        assertTrue(problems(measured("time,snr dB\n18:00,3\n17:59,3\n17:59:30,3\n18:00:10,4\n"))
                .get(0)
                .contains("more than a day"));
        assertTrue(problems(measured("time,snr dB,signal\n18:00,3,S7\n")).get(0).contains("stands beside signal"));
        List<String> decimals = problems(measured("time,snr dB\n18:00,14,5\n18:10,14\n"));
        assertEquals(1, decimals.size(), decimals.toString());
        assertTrue(decimals.get(0).startsWith(file + ":2:10: has more cells than there are heads"), decimals.get(0));
    }

    @Test
    void whatReadingsHoldIsNotStatedAsWell() {
        WrittenScenario scenario = measured("time,snr dB\n18:00,10\n18:10,10\n18:20,10\n");
        assertEquals(List.of(), problems(scenario));
        assertTold(
                "far.snr: stands beside readings", scenario.replacing("[far]", "readings", "snr = \"9 dB\"\nreadings"));
        assertTold(
                "far.noise: stands beside readings",
                scenario.replacing("[far]", "readings", "noise = \"S3\"\nreadings"));
        assertTold("hold the noise over time", scenario.with("[[far.noise-schedule]]", "at = '5 min'\nrise = '3 dB'"));
        assertTold("both waves", scenario.with("[sky.ground-wave]", "over-ground = '40 km'"));
        assertTold("spells that last longer", scenario.with("[sky.sporadic-e]", ""));
        assertEquals(List.of(), problems(scenario.with("[sky.drop-outs]", "")));
        WrittenScenario both =
                scenario.replacing("[near]", "snr = \"14 dB\"\n", "readings = { file = \"evening.csv\" }\n");
        assertEquals(List.of(), problems(both));
        assertTold("which hold the trend", both.with("[[sky.trend]]", "at = '5 min'\nrise = '3 dB'"));
        assertTold("those of one day", both.with("[sky]", "condition = 'moderate'\nday-to-day = '0 dB ± 3 dB'"));
    }

    private static void assertTold(String told, WrittenScenario scenario) {
        List<String> problems = problems(scenario);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).contains(told), problems.get(0));
    }

    @Test
    void aFileThatIsNotThereOrTellsOfAnotherTimeIsAProblemOfItsKey() {
        WrittenScenario scenario = measured("time,snr dB\n03:00,10\n04:00,10\n");
        assertTold("far.readings.file: holds no reading between", scenario);
        assertTold("there is no file \"other.csv\"", scenario.replacing("[far]", "evening.csv", "other.csv"));
        assertTold("far.readings.file: is missing", scenario.replacing("[far]", "file = \"evening.csv\"", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1000 h", "25 h"})
    void anAverageOverNoTimeOfADayIsAProblemOfItsKey(String average) {
        assertTold(
                "far.readings.average: must be from 0 to 24 h, but is \"" + average + "\"",
                measured("time,snr dB\n18:00,10\n19:00,10\n")
                        .replacing(
                                "[far]",
                                "file = \"evening.csv\"",
                                "file = \"evening.csv\", average = \"" + average + "\""));
    }

    @Test
    void whatWasNotMeasuredIsTold() throws ScenarioProblems {
        assertEquals(
                List.of(),
                measured("time,snr dB\n18:00,10\n18:30,10\n19:00,9\n").warnings(Map.of()));
        List<String> warnings = measured("time,snr dB\n18:10,10\n18:11,10\n18:12,10\n18:30,9\n18:31,9\n")
                .warnings(Map.of());
        assertEquals(3, warnings.size(), warnings.toString());
        assertTrue(warnings.get(0).contains("begins 10 min after pressing send"), warnings.toString());
        assertTrue(warnings.get(1).contains("ends 29 min before the horizon"), warnings.toString());
        assertTrue(warnings.get(2).contains("no reading for 18 min, from 12 min after"), warnings.toString());
        // 0.5 Hz for 5 s: 1 + 4.4 looks, 4.34 / sqrt(5.4) = 1.9 dB.
        assertTrue(measured("time,snr dB\n18:00,10\n19:00,9\n")
                .warnings(Map.of("far.readings.average", "5 s"))
                .get(0)
                .contains("too few fades: 1.9 dB of the fading"));
    }

    @Test
    void whatIsWrongWithAFileOutsideTheFolderIsNotTold() throws IOException {
        Path outside = Files.createTempFile("outside", ".csv");
        Files.writeString(outside, "secret,of somebody\n1,2\n", StandardCharsets.UTF_8);
        WrittenScenario scenario = measured("")
                .replacing("[far]", "evening.csv", outside.toString().replace('\\', '/'));
        List<String> told = problems(scenario);
        Files.delete(outside);
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("outside the scenario's folder")
                && !told.get(0).contains("secret"));
    }

    @Test
    void theTableGoesIntoWhatAResultCameFrom() throws IOException {
        WrittenScenario scenario = measured("time,snr dB\n18:00,10\n19:00,10\n");
        String before = hash(scenario);
        write("evening.csv", "time,snr dB\n18:00,10\n19:00,11\n");
        assertTrue(!before.equals(hash(scenario)), "another table, another result");
        assertThrows(
                IOException.class,
                () -> ScenarioReader.provenance(SourceFiles.DISK, folder.resolve("none.toml"), Map.of()));
    }

    private static String hash(WrittenScenario scenario) throws IOException {
        List<InputFile> inputs = ScenarioReader.provenance(SourceFiles.DISK, scenario.written(), Map.of())
                .inputs();
        assertEquals("evening.csv", inputs.get(inputs.size() - 1).name());
        return inputs.get(inputs.size() - 1).sha256();
    }

    @ParameterizedTest
    @EnumSource(SeriesColumn.class)
    void everyColumnStandsInTheManual(SeriesColumn column) throws IOException {
        String row = "| `%s` | `%s` | %s |".formatted(column.head(), column.example(), column.meaning());
        assertTrue(Files.readString(Path.of("../scenarios/README.md")).contains(row), row);
    }
}
