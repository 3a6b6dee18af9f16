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

/** Placing a log, as its user meets it: the demo's log beside the demo's model and beside wrong ones. */
final class PlaceCommandTest {
    private static final String SCENARIO = "../scenarios/orchard-net.toml";
    private static final String LOG = "../scenarios/orchard-net.csv";

    private final Interruption interruption = Interruption.never();
    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int place(String log, String... more) {
        return placeIn(SCENARIO, log, more);
    }

    private int placeIn(String scenarioFile, String log, String... more) {
        out = new StringWriter();
        err = new StringWriter();
        return Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(Stream.concat(
                                Stream.of("place", scenarioFile, "--log", log, "--out", folder.toString()),
                                Arrays.stream(more))
                        .toArray(String[]::new));
    }

    private String log(String text) throws IOException {
        return Files.writeString(folder.resolve("runs.csv"), text).toString();
    }

    @Test
    void everyRunOfTheDemoIsPlacedAndTheTextIsTheSameWhateverTheThreads() {
        assertEquals(ExitCode.DONE, place(LOG, "--trials", "40", "--threads", "1"), err::toString);
        String alone = out.toString();
        assertEquals("", err.toString());
        assertTrue(alone.startsWith("""
                        Orchard net: what do eight runs say of the path to the parish hall?
                        8 logged runs, each beside 40 simulated as it was, seed 12.

                        """), alone);
        // Two readings of 4 and 6 dB against 12 dB, 2 dB each: 7 dB below, give or take 2.24 times 2 dB over root 2,
        // since
        // there are two ends to be wrong about. Twelve was stated with 4 dB either way, so 5 dB is possible.
        assertTrue(alone.contains("""
                  At Parish Hall, 2 readings put the SNR 7.0 dB below the middle of what is
                  stated (-10.2 to -3.8 dB), which the scenario holds for possible: more noise
                """), alone);
        assertTrue(alone.contains("1 reading puts the SNR 5.0 dB above the middle of what is"), alone);
        assertTrue(alone.replaceAll(" +", " ").contains("5 brisk-comb * off at 12 min"), alone);
        assertTrue(alone.replaceAll(" +", " ").contains("15 kB up 19:40 14 kB through"), alone);
        assertTrue(alone.replaceAll(" +", " ").contains("6 patient-climber * 4 min"), alone);
        assertTrue(alone.replaceAll(" +", " ").contains("8 brisk-comb 10 min"), alone);
        assertTrue(
                Files.exists(folder.resolve("orchard-net-12-place-orchard-net").resolve("place.json")));
        assertEquals(ExitCode.DONE, place(LOG, "--trials", "40", "--threads", "3"), err::toString);
        assertEquals(alone, out.toString());
    }

    @Test
    void aModelThatIsFarTooHopefulOrTooGloomyIsCalledSo() {
        assertEquals(ExitCode.DONE, place(LOG, "--trials", "100", "--set", "far.snr=20 dB", "--set", "near.snr=20 dB"));
        assertTrue(
                out.toString().contains("The model is too hopeful: the runs are slower than simulated"), out::toString);
        assertEquals(ExitCode.DONE, place(LOG, "--trials", "100", "--set", "far.snr=0 dB", "--set", "near.snr=5 dB"));
        assertTrue(
                out.toString().contains("The model is too gloomy: the runs are quicker than simulated"), out::toString);
    }

    @Test
    void signalAndNoiseAreToldApartWhereBothAreStated() throws IOException {
        // S2 is stated as noise and S3 as signal; four S-units are 24 dB, and 2.24 deviations of 3 dB are 6.7 dB.
        String runs = log("""
                mode;direction;size;outcome;session-time;far-signal;far-noise
                slow-whistle;upload;200 B;delivered;3 min;S3;S6
                """);
        assertEquals(ExitCode.DONE, placeIn("../scenarios/polar-hut.toml", runs, "--trials", "10"), err::toString);
        String text = out.toString().replaceAll("\\s+", " ");
        assertTrue(
                text.contains("At Survey ship, 1 reading puts the noise 24.0 dB above what is stated (17.3 to 30.7 dB):"
                        + " more noise there than the scenario says."),
                text);
        assertTrue(text.contains("At Survey ship, 1 reading does not contradict the stated signal"), text);
    }

    @Test
    void withFewRunsTheTextSaysThatTheyTellLittle() throws IOException {
        String runs = log("""
                mode;direction;size;outcome;session-time
                brisk-comb;upload;30 kB;delivered;8 min
                """);
        assertEquals(ExitCode.DONE, place(runs, "--trials", "20"), err::toString);
        assertTrue(out.toString().contains("1 logged run, each beside 20 simulated as it was"), out::toString);
        assertTrue(
                out.toString().contains("With so few runs, hardly anything can be said of the model"), out::toString);
        assertFalse(out.toString().contains(" *"), "nothing was read");
    }

    @Test
    void mistakesOfALogAreToldWithLineAndColumnAndNothingIsSimulated() throws IOException {
        String runs = log("""
                mode,direction,size,outcome,session-time
                brisk-comb,upload,30 kB,delivered,12:30
                brisk-com,upload,30,deliverd,8 min
                """);
        assertEquals(ExitCode.BAD_INPUT, place(runs));
        assertEquals("", out.toString());
        assertEquals(
                String.join(
                        "\n",
                        runs + ":2:35: session-time: \"12:30\" can be read in two ways: 12 min 30 s, or 12 h 30 min",
                        "    write \"12 min 30 s\" or \"0:12:30\"",
                        runs + ":3:1: mode: \"brisk-com\" is not a valid choice",
                        "    did you mean \"brisk-comb\"?",
                        runs + ":3:18: size: \"30\" has no unit",
                        "    write a size such as \"64 kB\" (units: B, kB, MB, KiB, MiB)",
                        runs + ":3:21: outcome: \"deliverd\" is not a valid choice",
                        "    did you mean \"delivered\"?",
                        "4 problems; nothing was simulated or written.\n"),
                err.toString());
    }

    @Test
    void aLogThatIsNotNamedOrNotThereIsBadInput() {
        assertEquals(ExitCode.BAD_INPUT, place("nowhere.csv"));
        assertTrue(err.toString().startsWith("nowhere.csv: there is no such file\n"), err::toString);
        assertEquals(
                ExitCode.BAD_INPUT,
                Main.commandLine(scenario -> new Trials(scenario)::run, interruption)
                        .setErr(new PrintWriter(err))
                        .execute("place", SCENARIO));
        assertTrue(err.toString().contains("Missing required option: '--log=CSV'"), err::toString);
    }

    @Test
    void anInterruptionBeforeTheFirstTrialSaysSo() {
        interruption.ask();
        assertEquals(ExitCode.PARTIAL, place(LOG));
        assertEquals("", out.toString());
        assertEquals("Interrupted before the first trial was done.\n", err.toString());
    }
}
