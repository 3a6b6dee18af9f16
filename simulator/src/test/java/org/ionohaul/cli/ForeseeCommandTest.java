package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learning by prediction, as its user meets it. */
final class ForeseeCommandTest {
    private static final String TWO_ROUNDS = "1 80\n1 10\n1 10\n2 60\n1 10\n5 never\n";

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int foresee(Interruption interruption, InputStream typed, String... more) {
        out = new StringWriter();
        err = new StringWriter();
        InputStream before = System.in;
        System.setIn(typed);
        try {
            return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                    .setOut(new PrintWriter(out))
                    .setErr(new PrintWriter(err))
                    .execute(Stream.concat(
                                    Stream.of("foresee", "--trials", "6", "--beside", "../scenarios"),
                                    Arrays.stream(more))
                            .toArray(String[]::new));
        } finally {
            System.setIn(before);
        }
    }

    private int foresee(String typed, Path results, String... more) {
        String[] all = Stream.concat(Arrays.stream(more), Stream.of("--out", results.toString()))
                .toArray(String[]::new);
        return foresee(Interruption.never(), new ByteArrayInputStream(typed.getBytes(Charset.defaultCharset())), all);
    }

    private static List<String> remembered(Path results) throws IOException {
        return Files.readAllLines(results.resolve("foreseen.jsonl"));
    }

    private String[] ourModes(String... more) {
        return Stream.concat(
                        Stream.of("--mode", "brisk-comb", "--mode", "patient-climber", "--mode", "steady-wagon"),
                        Arrays.stream(more))
                .toArray(String[]::new);
    }

    @Test
    void theSameSeedIsTheSameRoundsWhateverTheThreadsAndAnotherIsOthers() throws IOException {
        Path one = folder.resolve("one");
        assertEquals(
                ExitCode.DONE, foresee(TWO_ROUNDS, one, ourModes("--rounds", "2", "--threads", "1")), err::toString);
        String first = out.toString();
        assertEquals("", err.toString());
        assertTrue(first.contains("Round 1 (invented with brisk-comb, patient-climber, steady-wagon, seed 1)"), first);
        assertTrue(first.contains("Round 2"), first);
        assertTrue(first.contains("when nobody sends: "), first);
        assertTrue(first.contains("All 2 rounds so far:"), first);
        first.lines().forEach(it -> assertTrue(it.length() <= 80, it));
        assertEquals(2, remembered(one).size());
        Path other = folder.resolve("other");
        assertEquals(ExitCode.DONE, foresee(TWO_ROUNDS, other, ourModes("--rounds", "2", "--threads", "3")));
        assertEquals(first, out.toString());
        assertEquals(remembered(one), remembered(other));
        foresee(TWO_ROUNDS, folder.resolve("third"), ourModes("--rounds", "2", "--seed", "2"));
        assertFalse(out.toString().equals(first.replace("seed 1", "seed 2")));
    }

    @Test
    void roundsGoOnWhereTheyStoppedAndOnePlayedTwiceCountsOnce() throws IOException {
        foresee(TWO_ROUNDS, folder, ourModes("--rounds", "1"));
        assertTrue(out.toString().contains("One round so far:"), out::toString);
        foresee(TWO_ROUNDS, folder, ourModes("--rounds", "1"));
        assertTrue(out.toString().contains("Round 2 ("), out::toString);
        assertTrue(out.toString().contains("This round:"), out::toString);
        assertTrue(out.toString().contains("All 2 rounds so far:"), out::toString);
        foresee(TWO_ROUNDS, folder, ourModes("--rounds", "1", "--from", "1"));
        assertTrue(out.toString().contains("so that it does not count"), out::toString);
        assertEquals(2, remembered(folder).size());
    }

    @Test
    void whatMakesNoSenseIsAskedAgainAndTheEndOfTypingLeavesTheScore() throws IOException {
        assertEquals(
                ExitCode.DONE,
                foresee("what\n1 20\n1 90\nlong\n9 4\n1 10\n1 10\n1 80\n", folder, ourModes("--width", "60")));
        String text = out.toString();
        assertTrue(text.contains("\"what\" does not say a mode and how sure"), text);
        assertTrue(text.contains("20 % is not from 50 to 100 %"), text);
        assertTrue(text.contains("\"long\" is no range of times"), text);
        assertTrue(text.contains("the range begins after its end"), text);
        assertTrue(text.contains("One round so far:"), text);
        text.lines().forEach(it -> assertTrue(it.length() <= 60, it));
        assertEquals(1, remembered(folder).size());
        assertEquals(ExitCode.DONE, foresee("", folder.resolve("nothing"), ourModes()));
        assertTrue(out.toString().contains("No round was played."), out::toString);
        assertFalse(Files.exists(folder.resolve("nothing")));
    }

    /** Nothing is ever typed; without the interruption this would wait for ever. */
    @Test
    void anInterruptionWhileNothingIsTypedEndsWithTheScore() throws IOException {
        Interruption interruption = Interruption.never();
        try (PipedOutputStream keyboard = new PipedOutputStream();
                PipedInputStream typed = new PipedInputStream(keyboard)) {
            Answers answers = new Answers(typed, interruption);
            keyboard.write("one line\n".getBytes(Charset.defaultCharset()));
            keyboard.flush();
            assertEquals(Optional.of("one line"), answers.next());
            interruption.ask();
            assertEquals(Optional.empty(), answers.next());
            assertEquals(ExitCode.DONE, foresee(interruption, typed, "--out", folder.toString()));
        }
        assertTrue(out.toString().contains("No round was played."), out::toString);
    }

    @Test
    void aScenariosTransfersAndModesAreAskedAbout() throws IOException {
        assertEquals(
                ExitCode.DONE,
                foresee("1 80\n1 20\n1 20\n", folder, "../scenarios/orchard-net.toml", "--rounds", "1"),
                err::toString);
        String text = out.toString();
        assertTrue(text.contains("Round 1 (orchard-net, seed 12)"), text);
        assertTrue(text.contains("Parish Hall"), text);
        assertTrue(text.contains("dB over the noise"), text);
        assertTrue(remembered(folder).get(0).contains("\"source\":\"orchard-net\",\"seed\":12,\"round\":1"));
    }

    @Test
    void wrongOptionsAreToldAtOnce() {
        assertEquals(ExitCode.BAD_INPUT, foresee("", folder, "--rounds", "0"));
        assertEquals(ExitCode.BAD_INPUT, foresee("", folder, "--mode", "brisk-com"));
        assertTrue(err.toString().contains("did you mean \"brisk-comb\"?"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, foresee("", folder, "--mode", "brisk-comb"));
        assertTrue(err.toString().contains("a race takes two modes"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, foresee("", folder, "nowhere.toml"));
    }
}
