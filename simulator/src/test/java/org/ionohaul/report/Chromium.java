package org.ionohaul.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A browser without a window, driven by its command line alone. */
public final class Chromium {
    private static final int PATIENCE_SECONDS = 60;

    private final Path program;
    private final Path scratch;

    private Chromium(Path program, Path scratch) {
        this.program = program;
        this.scratch = scratch;
    }

    /** Returns the browser if this machine has one. */
    public static Optional<Chromium> find(Path scratch) {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .map(program -> new Chromium(program, scratch));
    }

    /** Opens a page and returns what the browser printed: first its output, then its log. */
    public List<String> open(Path page, String... more) {
        try {
            Path out = Files.createTempFile(scratch, "out", ".txt");
            Path log = Files.createTempFile(scratch, "log", ".txt");
            Process process = new ProcessBuilder(command(page, more))
                    .redirectOutput(out.toFile())
                    .redirectError(log.toFile())
                    .start();
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException("the browser hangs; its log: " + Files.readString(log));
            }
            return List.of(Files.readString(out), Files.readString(log));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private List<String> command(Path page, String... more) {
        List<String> command = new ArrayList<>(List.of(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--allow-file-access-from-files",
                "--hide-scrollbars",
                "--enable-logging=stderr",
                "--virtual-time-budget=3000",
                "--user-data-dir=" + scratch.resolve("profile")));
        command.addAll(List.of(more));
        command.add(page.toUri().toString());
        return command;
    }
}
