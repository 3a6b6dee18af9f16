package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** The program in a process of its own, which can be killed. */
record ProgramProcess(Process process) {
    /** Starts it with a command line. */
    static ProgramProcess of(List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx300m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(arguments);
        return new ProgramProcess(new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** Waits until something holds while it is at work. */
    void await(BooleanSupplier holds) throws InterruptedException {
        while (process.isAlive() && !holds.getAsBoolean()) {
            Thread.sleep(1);
        }
        assertTrue(process.isAlive(), "it was over before it came to that");
    }

    /** Ends it as kill -9 does. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Waits until it has done all. */
    void finish() throws InterruptedException {
        assertTrue(process.waitFor(10, TimeUnit.MINUTES));
        assertEquals(ExitCode.DONE, process.exitValue());
    }

    /** Returns every file below a folder, so that nothing left behind goes unseen. */
    static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
