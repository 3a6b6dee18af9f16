package org.ionohaul.whatif;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.ionohaul.analysis.PointsDone;
import org.ionohaul.analysis.PointsFormat;
import org.ionohaul.rendering.ResultFolder;

/**
 * The file beside partial results that lets a variation go on.
 *
 * @param done what was done
 * @param fingerprint all that results depend on
 */
public record PointsFile(PointsDone done, String fingerprint) implements ResultFolder.Entry {
    private static final String NAME = "unfinished.points";

    @Override
    public String fileName() {
        return NAME;
    }

    @Override
    public void writeTo(OutputStream out) throws IOException {
        PointsFormat.write(done, fingerprint, out);
    }

    /**
     * Returns what was done of a variation; empty if nothing was, or of another one.
     *
     * @param folder where its partial results lie
     * @throws IOException if the file is there but cannot be read
     */
    public static Optional<PointsDone> find(ResultFolder folder, String fingerprint) throws IOException {
        Path file = folder.path().resolve(NAME);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return PointsFormat.read(fingerprint, in);
        }
    }
}
