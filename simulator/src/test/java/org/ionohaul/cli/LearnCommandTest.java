package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learning from a log, as its user meets it. */
final class LearnCommandTest {
    private static final String SCENARIO = "../scenarios/orchard-net.toml";
    private static final String LOG = "../scenarios/orchard-net.csv";

    private final Interruption interruption = Interruption.never();
    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    private int learn(String log, String... more) {
        return run(Stream.concat(
                        Stream.of("learn", SCENARIO, "--log", log, "--out", folder.toString()), Arrays.stream(more))
                .toArray(String[]::new));
    }

    @Test
    void theDemoIsLearnedFromAndTheSharperScenarioIsReadyForStudyWithItsRemarks() throws IOException {
        String sharper = folder.resolve("sharper.toml").toString();
        Files.createSymbolicLink(
                folder.resolve("modes"), Path.of("../scenarios/modes").toAbsolutePath());
        assertEquals(ExitCode.DONE, learn(LOG, "--trials", "80", "--threads", "1", "--write", sharper), err::toString);
        String alone = out.toString();
        assertTrue(alone.contains("8 logged runs beside 240 simulated logs, seed 12."), alone);
        assertTrue(alone.contains("The model can explain the log"), alone);
        assertTrue(alone.contains("The log tells of SNR at Parish Hall, SNR at Orchard Post."), alone);
        assertTrue(alone.contains("It says hardly anything of Doppler spread of path 1"), alone);
        assertTrue(alone.contains("list, from Orchard Post to Parish Hall:"), alone);
        assertTrue(alone.contains("Brisk comb, before"), alone);
        assertTrue(alone.contains("Written to " + sharper), alone);
        String text = Files.readString(Path.of(sharper));
        assertTrue(text.contains("# a guess too: is the hall as quiet as it looks?"), text);
        assertTrue(text.contains("doppler-spread = \"0.2 Hz .. 1 Hz\""), "what the log does not tell stays: " + text);
        assertFalse(text.contains("12 dB ± 4 dB\" "), text);
        assertEquals(ExitCode.DONE, run("check", sharper), err::toString);
        assertEquals(ExitCode.DONE, learn(LOG, "--trials", "80", "--threads", "3"), err::toString);
        assertEquals(alone.replace("\nWritten to " + sharper + ".\n", ""), out.toString(), "whatever the threads");
        assertTrue(
                Files.exists(folder.resolve("orchard-net-12-learn-orchard-net").resolve("learn.json")));
    }

    @Test
    void whatCantBeExplainedIsCalledOutAndNotWritten() throws IOException {
        String log = Files.writeString(folder.resolve("odd.csv"), """
                mode,direction,size,outcome,session-time,far-snr,far-read
                brisk-comb,upload,30 kB,delivered,2 min,3 dB,average ± 1 dB
                brisk-comb,upload,30 kB,delivered,25 min,20 dB,average ± 1 dB
                brisk-comb,upload,30 kB,delivered,2 min,3 dB,average ± 1 dB
                brisk-comb,upload,30 kB,delivered,25 min,20 dB,average ± 1 dB
                """).toString();
        Path sharper = folder.resolve("sharper.toml");
        assertEquals(ExitCode.NOT_WRITTEN, learn(log, "--trials", "120", "--write", sharper.toString()));
        assertTrue(out.toString().contains("The model can't explain this log"), out::toString);
        assertFalse(out.toString().contains("width left"), out::toString);
        assertFalse(Files.exists(sharper));
    }

    @Test
    void withTooFewTrialsNothingIsShown() {
        assertEquals(ExitCode.DONE, learn(LOG, "--trials", "20"), err::toString);
        assertTrue(out.toString().contains("Too little was simulated where the truth seems to lie"), out::toString);
        assertTrue(out.toString().contains("Try --trials 80."), out::toString);
        assertFalse(out.toString().contains("width left"), out::toString);
    }

    @Test
    void wrongOptionsAreToldAtOnce() throws IOException {
        assertEquals(ExitCode.BAD_INPUT, learn(LOG, "--daily", "far.snt"));
        assertTrue(err.toString().startsWith("--daily: far.snt is no uncertain input"), err::toString);
        assertTrue(err.toString().contains("did you mean \"far.snr\"?"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, learn(LOG, "--gap", "2"));
        assertTrue(err.toString().startsWith("--gap: \"2\" has no unit"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, learn(LOG, "--gap", "-2 dB"));
        assertEquals(ExitCode.BAD_INPUT, learn(LOG, "--write", SCENARIO));
        assertTrue(err.toString().contains("is there already"), err::toString);
        assertEquals(ExitCode.BAD_INPUT, run("learn", "../scenarios/river-watch.toml", "--log", LOG));
        assertTrue(err.toString().startsWith("the scenario is sure of everything"), err::toString);
        assertEquals("", out.toString());
    }

    @Test
    void anInterruptionTeachesNothing() {
        interruption.ask();
        assertEquals(ExitCode.PARTIAL, learn(LOG));
        assertEquals("", out.toString());
        assertEquals("Interrupted; nothing can be learned from a part.\n", err.toString());
    }
}
