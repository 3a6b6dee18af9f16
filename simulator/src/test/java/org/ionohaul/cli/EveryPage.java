package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ionohaul.trial.Trials;

/**
 * Everything that the program prints and every kind of page that it writes, of few trials.
 *
 * @param printed what each command printed, by its words
 * @param pages the pages
 */
record EveryPage(Map<String, String> printed, List<Path> pages) {
    private static final String SCENARIOS = "../scenarios/";
    private static final List<List<String>> COMMANDS = List.of(
            List.of("study", SCENARIOS + "river-watch.toml", "--trials", "30", "--size-trials", "12", "--full"),
            List.of("study", SCENARIOS + "noon-hop.toml", "--trials", "12", "--size-trials", "6", "--full"),
            List.of("study", SCENARIOS + "polar-hut.toml", "--trials", "12", "--size-trials", "0", "--full"),
            List.of("promise", SCENARIOS + "noon-hop.toml", "--trials", "40"),
            List.of("promise", SCENARIOS + "river-watch.toml", "--trials", "40", "--size", "20 kB", "--by", "5 min"),
            List.of("vary", SCENARIOS + "orchard-net.toml", "--trials", "12", "--set", "far.snr=6 dB | 12 dB | 18 dB"),
            List.of(
                    "vary",
                    SCENARIOS + "orchard-net.toml",
                    "--trials",
                    "12",
                    "--tornado",
                    "--set",
                    "near.snr=10 dB | 20 dB",
                    "--set",
                    "far.snr=10 dB | 20 dB"),
            List.of("sky", SCENARIOS + "river-watch.toml"),
            List.of("mode", "brisk-comb", "--modes", SCENARIOS + "modes"),
            List.of(
                    "trace",
                    SCENARIOS + "river-watch.toml",
                    "--transfer",
                    "photo",
                    "--direction",
                    "upload",
                    "--mode",
                    "brisk-comb"),
            List.of("runs", SCENARIOS + "noon-hop.toml", "--trials", "20"),
            List.of("place", SCENARIOS + "orchard-net.toml", "--log", SCENARIOS + "orchard-net.csv", "--trials", "40"),
            List.of("learn", SCENARIOS + "orchard-net.toml", "--log", SCENARIOS + "orchard-net.csv", "--trials", "200"),
            List.of(
                    "next",
                    SCENARIOS + "orchard-net.toml",
                    "--set",
                    "transfer.1.files.1.size=2 kB",
                    "--by",
                    "70 s",
                    "--trials",
                    "200"),
            List.of(
                    "grid",
                    SCENARIOS + "river-watch.toml",
                    "--trials",
                    "8",
                    "--set",
                    "near.snr=0 dB | 20 dB",
                    "--set",
                    "far.snr=-30 dB | 6 dB | 12 dB"),
            List.of("net", SCENARIOS + "nets/bridge-valley.toml", "--trials", "4"),
            List.of(
                    "vary",
                    SCENARIOS + "orchard-net.toml",
                    "--trials",
                    "12",
                    "--set",
                    "sky.path.1.doppler-spread=0.5 Hz | 2 Hz",
                    "--set",
                    "modes.brisk-comb.arq.window=4 | 8"),
            List.of("study", SCENARIOS + "orchard-net.toml", "--trials", "40", "--size-trials", "0", "--full"));

    /** Runs every command; results go to a folder. */
    static EveryPage in(Path folder) throws IOException {
        Map<String, String> printed = new TreeMap<>();
        for (List<String> command : COMMANDS) {
            printed.put(String.join(" ", command), printed(command, folder));
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return new EveryPage(
                    printed,
                    files.filter(it -> it.toString().endsWith(".html")).sorted().toList());
        }
    }

    /** Runs a command, results go to a folder, and returns what it prints. */
    static String printed(List<String> command, Path folder) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> arguments = new ArrayList<>(command);
        arguments.addAll(List.of("--out", folder.toString()));
        int code = Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments.toArray(String[]::new));
        assertEquals(ExitCode.DONE, code, () -> command + ": " + err);
        return out.toString();
    }
}
