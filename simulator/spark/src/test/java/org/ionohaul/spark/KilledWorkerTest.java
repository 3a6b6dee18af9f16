package org.ionohaul.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cluster of two workers, one of which dies in the midst. */
final class KilledWorkerTest {
    private static final int ROWS = 24;
    private static final int TASKS = 12;

    @TempDir
    private Path folder = Path.of("");

    @Test
    @DisplayName("a worker killed in the midst changes no byte of any row")
    void killedWorker() throws IOException, InterruptedException {
        Path table = Files.writeString(
                folder.resolve("levels.csv"),
                IntStream.range(0, ROWS)
                        .mapToObj(i -> i + "," + (i - 6) + " dB\n")
                        .collect(Collectors.joining("", "label.case,far.snr\n", "")));
        String expected = ProgramRun.onOneMachine(folder, table, "--trials", "8");
        Path answers = folder.resolve("answers");
        Path log = folder.resolve("cluster.log");

        Process driver = submit(table, answers, log);
        try {
            // Each task's part is kept apart until all are done. The first is the line of heads.
            while (parts(answers) < 3) {
                assertTrue(driver.isAlive(), () -> read(log));
                Thread.sleep(10);
            }
            ProcessHandle worker = driver.children().findFirst().orElseThrow();
            assertTrue(worker.destroyForcibly());
            int before = parts(answers);
            assertTrue(before < TASKS, before + " of " + TASKS + " tasks were done when the worker was killed");
            assertEquals(0, driver.waitFor(), () -> read(log));
        } finally {
            driver.descendants().forEach(ProcessHandle::destroyForcibly);
            driver.destroyForcibly();
        }

        assertTrue(read(log).contains("Lost executor"), () -> read(log));
        assertEquals(1 + ROWS * 2 * 2 * 4, expected.lines().count());
        assertEquals(expected, ProgramRun.parts(answers));
    }

    private Process submit(Path table, Path answers, Path log) throws IOException {
        List<String> arguments =
                new ArrayList<>(List.of(System.getProperty("spark.opens", "").split(" ", -1)));
        arguments.addAll(List.of(
                "-Xmx1g",
                "-cp",
                home().resolve("jars") + File.separator + "*",
                "org.apache.spark.deploy.SparkSubmit",
                "--master",
                "local-cluster[2,1,1024]",
                "--conf",
                "spark.ui.enabled=false",
                Path.of("target", "ionohaul-spark.jar").toAbsolutePath().toString(),
                ProgramRun.SCENARIO.toString(),
                "--rows",
                table.toString(),
                "--out",
                answers.toString(),
                "--trials",
                "8",
                "--tasks",
                Integer.toString(TASKS)));
        // Nothing of it is to be heard on any network.
        return ProgramRun.begin(
                log,
                Map.of(
                        "SPARK_HOME",
                        home().toString(),
                        // Else it is looked for in Spark's own build.
                        "SPARK_SCALA_VERSION",
                        "2.13",
                        "SPARK_LOCAL_IP",
                        "127.0.0.1",
                        "SPARK_LOCAL_HOSTNAME",
                        "127.0.0.1",
                        "SPARK_WORKER_DIR",
                        folder.resolve("work").toString()),
                arguments);
    }

    /** A Spark installation: as far as a worker needs one, it is a folder of jars. */
    private Path home() throws IOException {
        Path home = folder.resolve("spark");
        if (!Files.exists(home)) {
            Path jars = Files.createDirectories(home.resolve("jars"));
            for (String jar :
                    Files.readString(Path.of("target", "jars-of-spark.txt")).split(File.pathSeparator, -1)) {
                Files.createSymbolicLink(
                        jars.resolve(String.valueOf(Path.of(jar).getFileName())), Path.of(jar));
            }
        }
        return home;
    }

    private static int parts(Path answers) throws IOException {
        Path unfinished = answers.resolve("_temporary").resolve("0");
        if (!Files.exists(unfinished)) {
            return 0;
        }
        try (Stream<Path> found = Files.list(unfinished)) {
            return (int) found.filter(it -> String.valueOf(it.getFileName()).startsWith("task_"))
                    .count();
        }
    }

    private static String read(Path log) {
        try {
            return Files.readString(log);
        } catch (IOException e) {
            return e.toString();
        }
    }
}
