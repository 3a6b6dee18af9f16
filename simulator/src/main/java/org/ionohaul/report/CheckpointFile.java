package org.ionohaul.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.Checkpoint;
import org.ionohaul.study.StudyResult;

/**
 * The file beside partial results that lets a study go on.
 *
 * @param result what was done
 * @param fingerprint all that results depend on but for the number of trials
 */
public record CheckpointFile(StudyResult result, String fingerprint) implements ResultFolder.Entry {
    private static final String NAME = "unfinished.rows";

    @Override
    public String fileName() {
        return NAME;
    }

    @Override
    public void writeTo(Path file) throws IOException {
        Checkpoint.write(result, fingerprint, Files.newOutputStream(file));
    }

    /**
     * Returns what was done of a study; empty if nothing was, or of another one.
     *
     * @param folder where its partial results lie
     * @throws IOException if the file is there but cannot be read
     */
    public static Optional<StudyResult> find(ResultFolder folder, Scenario scenario, String fingerprint)
            throws IOException {
        Path file = folder.path().resolve(NAME);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Checkpoint.read(scenario, fingerprint, in);
        }
    }
}
