package org.ionohaul.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.Checkpoint;

/**
 * The file beside partial results that lets a study go on.
 *
 * @param done what was done
 * @param fingerprint all that results depend on but for the numbers of trials
 */
public record CheckpointFile(Checkpoint done, String fingerprint) implements ResultFolder.Entry {
    private static final String NAME = "unfinished.rows";

    @Override
    public String fileName() {
        return NAME;
    }

    @Override
    public void writeTo(OutputStream out) throws IOException {
        done.write(fingerprint, out);
    }

    /**
     * Returns what was done of a study; empty if nothing was, or of another one.
     *
     * @param folder where its partial results lie
     * @throws IOException if the file is there but cannot be read
     */
    public static Optional<Checkpoint> find(
            ResultFolder folder, Scenario scenario, Scenario ofSizes, String fingerprint) throws IOException {
        Path file = folder.path().resolve(NAME);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Checkpoint.read(scenario, ofSizes, fingerprint, in);
        }
    }
}
