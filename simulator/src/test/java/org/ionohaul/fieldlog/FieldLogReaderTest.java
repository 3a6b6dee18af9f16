package org.ionohaul.fieldlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.junit.jupiter.api.Test;

/** A log is read as spreadsheets write it, and everything wrong with it is told at once, with its place. */
class FieldLogReaderTest {
    private static final List<String> MODES = List.of("brisk-comb", "patient-climber");

    private static List<LoggedRun> runs(String text) throws ScenarioProblems {
        return FieldLogReader.read(SourceFiles.of(Map.of("runs.csv", text)), Path.of("runs.csv"), MODES)
                .runs();
    }

    private static List<String> problems(String text) {
        return assertThrows(ScenarioProblems.class, () -> runs(text)).told();
    }

    @Test
    void aRunIsReadWithEveryColumn() throws ScenarioProblems {
        LoggedRun run = runs("""
                        # invented
                        Date,start,mode,direction,size,on air,outcome,through,session time,delivered-after,rounded,near-snr,near-signal,near-noise,near-read,far-snr,far-read,remarks
                        2031-03-14,18:08,brisk-comb,upload,38 kB,21 kB,delivered,,14 min,12 min 30 s,30 s down,9 dB,S7,S4,average ± 2 dB,"4,5 dB",glance,"rain, and lights"
                        """).get(0);
        assertEquals(Optional.of(LocalDate.of(2031, 3, 14)), run.date());
        assertEquals(Optional.of(LocalTime.of(18, 8)), run.start());
        assertEquals("brisk-comb", run.mode());
        assertEquals(Direction.UPLOAD, run.direction());
        assertEquals(38_000, run.bytes());
        assertEquals(OptionalLong.of(21_000), run.onAirBytes());
        assertEquals(LoggedOutcome.DELIVERED, run.outcome());
        assertEquals(Optional.of(new NotedTime(840, 30, Rounding.DOWN)), run.sessionTime());
        assertEquals(Optional.of(new NotedTime(750, 30, Rounding.DOWN)), run.deliveredAfter());
        assertEquals(new Reading(9, HowRead.AVERAGE, 2), run.near().snr().orElseThrow());
        // S7 is two S-units of 6 dB below S9, -73 dBm (IARU Region 1 R.1).
        assertEquals(-85, run.near().signal().orElseThrow().value(), 1e-9);
        assertEquals(new Reading(4.5, HowRead.GLANCE, 3), run.far().snr().orElseThrow());
        assertEquals("rain, and lights", run.remarks());
    }

    @Test
    void aSpreadsheetWithSemicolonsAndDecimalCommasAndMissingCellsIsReadAlike() throws ScenarioProblems {
        LoggedRun run = runs(String.join(
                        "\r\n",
                        "\uFEFFmode;size;direction;outcome;session-time;far-snr;through",
                        "patient-climber;1,5 kB;download;broken-off;8 min;-2,5 dB;400 B",
                        ";;;;;;"))
                .get(0);
        assertEquals(1_500, run.bytes());
        assertEquals(OptionalLong.of(400), run.throughBytes());
        assertEquals(-2.5, run.far().snr().orElseThrow().value(), 1e-9);
        assertEquals(Optional.empty(), run.date());
        assertEquals(EndReadings.NONE, run.near());
    }

    @Test
    void howFinelyATimeIsNotedFollowsFromTheUnitsWrittenIfNothingElseSaysSo() throws ScenarioProblems {
        String head = "mode,size,direction,outcome,session-time\n";
        List<LoggedRun> runs = runs(head
                + "brisk-comb,1 kB,upload,delivered,14 mins\n"
                + "brisk-comb,1 kB,upload,delivered,14 min 20 s\n"
                + "brisk-comb,1 kB,upload,delivered,0:14:20\n");
        assertEquals(
                List.of(60.0, 1.0, 1.0),
                runs.stream()
                        .map(it -> it.sessionTime().orElseThrow().stepSeconds())
                        .toList());
        assertEquals(860, runs.get(2).sessionTime().orElseThrow().seconds());
    }

    @Test
    void everythingWrongIsToldAtOnceWithLineAndColumn() {
        assertEquals(
                List.of(
                        "runs.csv:1:1: outcome: is missing\n    add the column; heads: "
                                + String.join(", ", LogColumn.heads()),
                        "runs.csv:1:21: there is no column \"outcom\"\n    did you mean \"outcome\"?",
                        "runs.csv:2:1: mode: \"brisk-com\" is not a valid choice\n    did you mean \"brisk-comb\"?",
                        "runs.csv:2:11: size: \"38\" has no unit\n    write a size such as \"64 kB\" (units: B, kB, MB, KiB,"
                                + " MiB)",
                        "runs.csv:2:34: session-time: \"12:30\" can be read in two ways: 12 min 30 s, or 12 h 30 min\n"
                                + "    write \"12 min 30 s\" or \"0:12:30\"",
                        "runs.csv:3:1: mode: is empty\n    write it, such as brisk-comb"),
                problems("""
                        mode,size,direction,outcom,session-time
                        brisk-com,38,upload,"deliver,ed",12:30
                        ,38 kB,upload,delivered,12 min
                        """));
    }

    @Test
    void whatContradictsItselfIsRefused() {
        String head = "mode,size,direction,outcome,through,session-time,delivered-after,on-air\n";
        assertEquals(
                List.of(
                        "runs.csv:2:35: through: is not all that was sent, but the run delivered\n    leave it empty",
                        "runs.csv:3:36: through: is all that was sent, but the run did not deliver\n"
                                + "    write delivered-not-closed if everything was through",
                        "runs.csv:4:41: session-time: is empty, but the run was broken off\n"
                                + "    write when: it might have got through later",
                        "runs.csv:5:45: delivered-after: is later than the end of the session",
                        "runs.csv:6:45: delivered-after: is noted, but the run did not deliver\n    leave it empty",
                        "runs.csv:7:52: on-air: is more than twice the size\n    write the size after compression"),
                problems(head
                        + "brisk-comb,10 kB,upload,delivered,  3 kB,9 min,,\n"
                        + "brisk-comb,10 kB,upload,broken-off,  10 kB,9 min,,\n"
                        + "brisk-comb,10 kB,upload,broken-off,4 kB,,,\n"
                        + "brisk-comb,10 kB,upload,delivered,   ,9 min,12 min,\n"
                        + "brisk-comb,10 kB,upload,gave-up,     ,9 min,8 min ,\n"
                        + "brisk-comb,10 kB,upload,delivered,   ,9 min,8 min ,30 kB\n"));
    }

    @Test
    void anEmptyLogAndAMissingOneAreProblems() {
        assertTrue(problems("mode,size\n").get(0).startsWith("runs.csv:1:1: holds no run"));
        ScenarioProblems gone = assertThrows(
                ScenarioProblems.class,
                () -> FieldLogReader.read(SourceFiles.of(Map.of()), Path.of("runs.csv"), MODES));
        assertEquals(List.of("runs.csv: there is no such file"), gone.told());
    }

    @Test
    void aNotedTimeKnowsWhatTheTrueOneMayHaveBeenAndHowAnotherWouldBeWritten() {
        NotedTime nearest = new NotedTime(840, 60, Rounding.NEAREST);
        assertEquals(List.of(810.0, 870.0), List.of(nearest.lowSeconds(), nearest.highSeconds()));
        assertEquals(780, nearest.written(771).seconds());
        NotedTime up = new NotedTime(840, 60, Rounding.UP);
        assertEquals(List.of(780.0, 840.0), List.of(up.lowSeconds(), up.highSeconds()));
        assertEquals(780, up.written(721).seconds());
        NotedTime down = new NotedTime(840, 60, Rounding.DOWN);
        assertEquals(List.of(840.0, 900.0), List.of(down.lowSeconds(), down.highSeconds()));
        assertEquals(720, down.written(779).seconds());
    }
}
