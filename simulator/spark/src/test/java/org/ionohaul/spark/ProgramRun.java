package org.ionohaul.spark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Java programs in processes of their own, as users run them. */
final class ProgramRun {
    static final Path SCENARIO = Path.of("..", "..", "scenarios", "river-watch.toml");

    private ProgramRun() {}

    /** Begins one, whose words go to a file. */
    static Process begin(Path log, Map<String, String> environment, List<String> arguments) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(Stream.concat(
                                Stream.of(Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString()),
                                arguments.stream())
                        .toList())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        builder.environment().putAll(environment);
        return builder.start();
    }

    /** Returns the table that the program itself makes of the same question on one machine. */
    static String onOneMachine(Path folder, Path table, String... more) throws IOException, InterruptedException {
        Path log = folder.resolve("program.log");
        Path results = folder.resolve("results");
        Process program = begin(
                log,
                Map.of(),
                Stream.concat(
                                Stream.of(
                                        "-jar",
                                        Path.of("..", "target", "ionohaul.jar").toString(),
                                        "grid",
                                        SCENARIO.toString(),
                                        "--rows",
                                        table.toString(),
                                        "--out",
                                        results.toString()),
                                Stream.of(more))
                        .toList());
        if (program.waitFor() != 0) {
            throw new IOException(Files.readString(log));
        }
        try (Stream<Path> found = Files.walk(results)) {
            return Files.readString(
                    found.filter(it -> it.endsWith("grid.csv")).findFirst().orElseThrow());
        }
    }

    /** Returns parts that Spark wrote, one after the other. */
    static String parts(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            StringBuilder all = new StringBuilder();
            for (Path part : files.filter(it -> String.valueOf(it.getFileName()).startsWith("part-"))
                    .sorted()
                    .collect(Collectors.toList())) {
                all.append(Files.readString(part));
            }
            return all.toString();
        }
    }
}
