package org.ionohaul.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** What a user types, line by line. Whoever waits for a line is woken by an interruption, which reading itself is not. */
final class Answers {
    private static final long WAIT_MILLIS = 100;

    private final BlockingQueue<Optional<String>> lines = new LinkedBlockingQueue<>();
    private final BooleanSupplier isInterrupted;
    private boolean isOver;

    /** Begins to read. */
    Answers(InputStream in, BooleanSupplier isInterrupted) {
        this.isInterrupted = isInterrupted;
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, Charset.defaultCharset()));
        Thread reading = new Thread(() -> read(reader), "answers");
        reading.setDaemon(true);
        reading.start();
    }

    private void read(BufferedReader reader) {
        try {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                lines.add(Optional.of(line));
            }
        } catch (IOException e) {
            // What can't be read any more is over, like a file at its end.
        } finally {
            lines.add(Optional.empty());
        }
    }

    /** Returns the next line; empty at the end of them, or when interrupted. */
    Optional<String> next() {
        while (!isOver && !isInterrupted.getAsBoolean()) {
            try {
                Optional<String> line = lines.poll(WAIT_MILLIS, TimeUnit.MILLISECONDS);
                if (line != null) {
                    isOver = line.isEmpty();
                    return line;
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                isOver = true;
            }
        }
        return Optional.empty();
    }
}
