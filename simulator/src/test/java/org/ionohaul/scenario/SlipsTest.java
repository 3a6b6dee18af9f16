package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of the pen: each is told in words that help, or taken for the one thing that it can mean. */
final class SlipsTest {
    private final Path folder;

    SlipsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "transfer.1.files.1.size | 60.000 B | \"60.000 B\" can be read in two ways: 60 B or 60000 B"
                        + " | write \"60 B\" or \"60000 B\"",
                "transfer.1.files.1.compression | 4.5 | 4.5 would make the file larger, not smaller"
                        + " | write what compression leaves: \"22 %\" if the file shrinks 4.5 times",
                "transfer.1.files.1.compression | 45 | 45 would make the file larger, not smaller"
                        + " | did you mean \"45 %\"?",
                "distance | 64000 km | must be from 0 to 50,000 km, once round the Earth and up and down, but is"
                        + " \"64000 km\" | ``",
                "near.snr | S7 | \"S7\" is a meter reading, not a ratio in dB"
                        + " | state signal and noise in place of snr, such as signal = \"S7\" and noise = \"S3\"",
                "near.snr | 20..10 dB | \"20..10 dB\" runs from high to low | write the lower end first",
                "near.snr | 14 | 14 has no unit | write it in quotation marks with its unit, such as \"14 dB\"",
                "far.name | near | \"near\" is the name of the other station too"
                        + " | give each station its own name: the answers tell them apart by it",
                "trials | many | \"many\" is not a whole number | write a whole number such as 1000",
                "transfer.1.deadlines | [\"half past six\"] | \"half past six\" is not a time"
                        + " | write a time such as \"20 min\" (units: s, min, h, ms, µs, us)",
                "transfer.1.deadlines | [\"17:30\"] | lies beyond the horizon: by then no trial is watched any more"
                        + " | raise the horizon or take the deadline out",
                "modes.brisk-comb.rate-policy.start-level | 1 | is called modes.brisk-comb.rate-policy.start-rate now"
                        + " | ``",
                "modes.brisk-comb.level.1.payload | 1 B | is called modes.brisk-comb.rate.1.payload now | ``",
                "modes.brisk-comb.rate-policy.bad-share | 45 | must be above 0 and at most 1, but is 45 | did you mean"
                        + " \"45 %\"?"
            })
    void aValueIsRefusedInWordsThatHelp(String key, String value, String message, String remedy) {
        assertRefused(message, remedy, WrittenScenario.in(folder).problems(Map.of(key, value)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "7 | \"7\" has no unit | did you mean \"S7\"?",
                "S12 | \"S12\" is no meter reading | a meter shows S1 to S9, then S9+10 and so on up to S9+99",
                "S9+60 | \"S9+60\" can't be | noise in 3 kHz lies between -140 dBm, that of a resistor, and S9+40,"
                        + " above any city's (ITU-R P.372)",
                "-97 dB | \"-97 dB\" is a ratio in dB, not a level in dBm | write what the meter shows, such as"
                        + " \"S7\", or a level such as \"-97 dBm\""
            })
    void aNoiseIsRefusedInWordsThatHelp(String noise, String message, String remedy) {
        WrittenScenario scenario = WrittenScenario.in(folder)
                .replacing("[near]", "snr = \"14 dB\"", "signal = \"s7\"\nnoise = \"" + noise + "\"");
        assertRefused(message, remedy, scenario.problems());
    }

    private static void assertRefused(String message, String remedy, List<Problem> problems) {
        assertEquals(message, problems.get(0).message());
        assertEquals(remedy, problems.get(0).remedy());
        assertEquals(1, problems.size(), problems::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "trials | 1k | 1000",
                "trials | 1,500 | 1500",
                "horizon | 1h30 | 5400",
                "horizon | “90 min” | 5400",
                "distance | 1 200 km | 1200000",
                "transfer.1.deadlines | [\"18:30\"] | 1800",
                "transfer.1.deadlines | [\"by 18:30\"] | 1800",
                "transfer.1.files.1.compression | 0,5 | 500",
                "transfer.1.files.1.compression | 50 % | 500",
                "transfer.1.files.1.compression | 1 of 2 | 500",
                "near.snr | 14,5 dB | 14.5",
                "near.snr | 10..20 dB | 15"
            })
    void whatHasOneMeaningIsTaken(String key, String value, double meant) throws ScenarioProblems {
        Path file = WrittenScenario.in(folder).written();
        Scenario scenario = ScenarioReader.read(file, Map.of(key, value));
        double understood = switch (key) {
            case "trials" -> scenario.trials();
            case "horizon" -> scenario.horizonSeconds();
            case "distance" -> scenario.distanceMetres();
            case "near.snr" -> scenario.sky().conditions(any -> 0.5).near().snrDb();
            case "transfer.1.deadlines" ->
                scenario.transfers().get(0).deadlinesSeconds().get(0);
            default -> scenario.transfers().get(0).totalBytes();
        };
        assertEquals(meant, understood, 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"18:10, 600", "00:10, 22200", "17:59, 86340", "20 min, 1200"})
    void aDeadlineByTheClockIsTheNextSuchTimeAfterSending(String text, double afterSend) throws WrongValue {
        assertEquals(afterSend, Deadline.of(text).afterSend(18 * 3600));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "size = “38 kB” | 1:8 | there are curly quotation marks, as word processors make them"
                        + " | write straight ones: size = \"38 kB\"",
                "size = 38 kB | 1:8 | 38 kB stands without quotation marks"
                        + " | write it as text or quantity: size = \"38 kB\"",
                "title = A test # mine | 1:9 | A test stands without quotation marks"
                        + " | write it as text or quantity: title = \"A test\"",
                "title = \"A test | 1:16 | Unexpected end of line, expected \" or a character"
                        + " | is the quotation mark missing that ends the text?"
            })
    void aSlipOfSyntaxIsToldInWordsThatHelp(String line, String place, String message, String remedy)
            throws IOException {
        Path file = Files.writeString(folder.resolve("slip.toml"), line + "\n");
        Problem problem = assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(file)).problems().stream()
                .filter(it -> it.key().isEmpty())
                .findFirst()
                .orElseThrow();
        assertEquals(place, problem.line() + ":" + problem.column());
        assertEquals(message, problem.message());
        assertEquals(remedy, problem.remedy());
    }

    @Test
    void aByteOrderMarkSaysNothing() throws IOException, ScenarioProblems {
        Path file = WrittenScenario.in(folder).written();
        Files.writeString(file, "\uFEFF" + Files.readString(file));
        assertEquals("A test", ScenarioReader.read(file).title());
    }

    @Test
    void aFileThatIsNotThereIsAdvisedWithWhatToType() throws IOException {
        WrittenScenario.in(Files.createDirectories(folder.resolve("scenarios"))).written();
        Path meant = folder.resolve("scenarios").resolve("test.toml");
        for (String typed : List.of("tset", "tst.toml", "scenarios/tset")) {
            Path file = folder.resolve(typed);
            Problem problem = assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(file))
                    .problems()
                    .get(0);
            assertEquals("did you mean \"" + meant + "\"?", problem.remedy());
        }
        assertEquals(meant, ScenarioReader.named(folder.resolve("scenarios").resolve("test")));
    }

    @Test
    void aModeMayBeNamedWithItsEnding() throws ScenarioProblems {
        Path file = WrittenScenario.in(folder).written();
        Map<String, String> changes = Map.of("modes", "[\"brisk-comb.toml\"]");
        assertEquals(
                "brisk-comb", ScenarioReader.read(file, changes).modes().get(0).name());
    }

    @Test
    void aKeyThatHasANewNameIsToldIt() throws IOException {
        String mode =
                Files.readString(ShippedFilesTest.SCENARIOS.resolve("modes").resolve("brisk-comb.toml"));
        Path file = Files.writeString(
                folder.resolve("old.toml"),
                mode.replace("[[rate]]", "[[level]]")
                        .replace("[rate-policy]", "[ladder]")
                        .replace("start-rate", "start-level"));
        List<Problem> problems = assertThrows(ScenarioProblems.class, () -> ScenarioReader.readMode(file))
                .problems();
        assertEquals(
                List.of(
                        "level: is called [[rate]] now: write [[rate]]",
                        "ladder: is called [rate-policy] now: write [rate-policy]"),
                problems.stream()
                        .map(it -> it.key() + ": " + it.message() + ": " + it.remedy())
                        .toList());
    }
}
