package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type: taken where it can have one meaning, else answered in words that help. */
final class SlipsOnTheCommandLineTest {
    private static final String DEMO = "../scenarios/river-watch.toml";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(String... arguments) {
        return Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    private String told() {
        return err.toString()
                .lines()
                .limit(2)
                .map(String::strip)
                .reduce((a, b) -> a + " / " + b)
                .orElse("");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "studdy x.toml | There is no command \"studdy\". / did you mean \"study\"?",
                "scenarios/x.toml | There is no command \"scenarios/x.toml\". / say what to do with it, such as:"
                        + " ionohaul study scenarios/x.toml",
                "study DEMO --trials many | Invalid value for option '--trials': \"many\" is not a whole number /"
                        + " write a whole number such as 1000",
                "study DEMO --trials 9999999k | Invalid value for option '--trials': \"9999999k\" is too large / write"
                        + " a whole number of at most 2147483647",
                "promise DEMO --by 15 | Invalid value for option '--by': \"15\" has no unit / write a time such as"
                        + " \"20 min\" (units: s, min, h, ms, µs, us)",
                "promise DEMO --by 25:00 | Invalid value for option '--by': \"25:00\" is not a time of day / write"
                        + " hours and minutes such as \"18:05\"",
                "promise DEMO --sure 100% | Invalid value for option '--sure': \"100%\" is not a share from 1 % to"
                        + " below 100 % / write a share such as \"90 %\", 0.9 or \"9/10\"",
                "promise DEMO --size 60.000B | Invalid value for option '--size': \"60.000B\" can be read in two ways:"
                        + " 60 B or 60000 B / write \"60 B\" or \"60000 B\"",
                "promise DEMO --by “15 min” | There are curly quotation marks, which mean nothing to a shell: “15 /"
                        + " type straight ones, such as --by \"15 min\"",
                "sky DEMO --minutes soon | Invalid value for option '--minutes': \"soon\" is not a time / write a time"
                        + " such as \"20 min\" (units: s, min, h, ms, µs, us)",
                "trace DEMO --mode brisk-cmb | --mode: there is no \"brisk-cmb\" / did you mean \"brisk-comb\"?",
                "vary DEMO --set near.signal=S5..S9+20 | `--set near.signal: a range of meter readings ends at S9 /"
                        + " write a list, such as \"S7 | S9 | S9+10\"`",
                "vary DEMO --set seed=1..9 | --set seed: cannot be varied, since every value is tried under the same"
                        + " skies / give one value with --seed",
                "study ../scenarios/river-wach | ../scenarios/river-wach: there is no such file / did you mean"
                        + " \"../scenarios/river-watch.toml\"?"
            })
    void aSlipIsAnsweredInWordsThatHelp(String typed, String answer) {
        String[] arguments = Stream.of(typed.split(" ", -1))
                .map(it -> it.replace("DEMO", DEMO))
                .toArray(String[]::new);
        assertEquals(ExitCode.BAD_INPUT, run(arguments));
        assertEquals(answer, told());
        assertEquals("", out.toString());
    }

    /** The launcher says where the program lies; this test says so in its place. */
    @Test
    void aScenarioThatCameAlongIsFoundFromAnotherFolder(@TempDir Path elsewhere) {
        System.setProperty("ionohaul.home", "..");
        try {
            assertEquals(
                    ExitCode.BAD_INPUT,
                    run("study", elsewhere.resolve("river-watch").toString()));
        } finally {
            System.clearProperty("ionohaul.home");
        }
        assertTrue(told().endsWith("did you mean \"../scenarios/river-watch.toml\"?"), told());
    }

    @ParameterizedTest
    @CsvSource({"30, 30", "30 min, 30", "1h30, 90", "'0,5 h', 30"})
    void howLongToWatchIsMinutesOrATime(String written, int minutes) {
        assertEquals(ExitCode.DONE, run("sky", DEMO, "--minutes", written), err::toString);
        String asWritten = out.toString();
        out.getBuffer().setLength(0);
        assertEquals(ExitCode.DONE, run("sky", DEMO, "--minutes", Integer.toString(minutes)));
        assertEquals(out.toString(), asWritten);
    }

    @Test
    void countsSharesAndDeadlinesAreWrittenAsInAScenario() {
        String[] plain = {
            "promise", DEMO, "--trials", "20", "--by", "22 min", "--sure", "90 %", "--out", folder.toString()
        };
        assertEquals(ExitCode.DONE, run(plain), err::toString);
        String asPlain = out.toString();
        out.getBuffer().setLength(0);
        String[] otherwise = {
            "promise", DEMO, "--trials", "0.02k", "--by", "by 18:30", "--sure", "0,9", "--out", folder.toString()
        };
        assertEquals(ExitCode.DONE, run(otherwise), err::toString);
        assertEquals(asPlain, out.toString());
    }

    @Test
    void aScenarioMayBeNamedWithoutItsEnding() {
        assertEquals(ExitCode.DONE, run("check", "../scenarios/river-watch"), err::toString);
        assertTrue(out.toString().startsWith("../scenarios/river-watch.toml: in order. 4 modes"), out::toString);
    }

    @Test
    void aModeMayBeNamedWithItsEnding() {
        String[] arguments = {"mode", "steady-wagon.toml", "--modes", "../scenarios/modes", "--out", folder.toString()};
        assertEquals(ExitCode.DONE, run(arguments), err::toString);
        assertTrue(Files.exists(folder.resolve("mode-steady-wagon/card.txt")));
    }

    @Test
    void warningsAreToldApartAndCheckIsDone() {
        assertEquals(ExitCode.DONE, run("check", DEMO, "--set", "distance=30000 km"));
        assertEquals(
                "--set: distance: \"30000 km\" is unusual: usually from 0 km to 22000 km / change it unless you mean"
                        + " it",
                told());
        assertTrue(err.toString().contains("1 warning; used as it stands"), err::toString);
        assertTrue(out.toString().contains("distance 30,000 km"), out::toString);
        assertFalse(out.toString().contains("unusual"), out::toString);
    }

    @Test
    void aRhythmThatCannotBeKeptIsWarnedOf() {
        String noon = "../scenarios/noon-hop.toml";
        assertEquals(ExitCode.DONE, run("check", noon, "--set", "modes=[\"m625-arq\"]"), err::toString);
        String warning = " km is too far for mode m625-arq, whose overs leave every 450 ms";
        assertFalse(err.toString().contains(warning), err::toString);
        assertEquals(ExitCode.DONE, run("check", noon, "--set", "modes=[\"m625-arq\"]", "--set", "distance=20000 km"));
        assertTrue(err.toString().contains("--set: distance: 20,000" + warning), err::toString);
    }

    @Test
    void aStudyTellsWarningsAndGoesOn() throws IOException {
        String[] study = {
            "study", DEMO, "--trials", "2", "--size-trials", "0", "--out", folder.toString(), "--set", "far.power=20 kW"
        };
        assertEquals(ExitCode.DONE, run(study), err::toString);
        assertTrue(err.toString().startsWith("--set: far.power: \"20 kW\" is unusual"), err::toString);
        try (Stream<Path> folders = Files.list(folder)) {
            Path results = folders.filter(
                            it -> it.getFileName().toString().startsWith("river-watch-41-far.power-20_kW"))
                    .findFirst()
                    .orElseThrow();
            assertTrue(Files.readString(results.resolve("summary.json")).contains("20 kW"));
        }
    }
}
