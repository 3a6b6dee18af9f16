package org.ionohaul.foresight;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.foresight.Guess.Span;
import org.ionohaul.rendering.JsonForm;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/**
 * The rounds that were played, a line of JSON each, added as soon as a round is over, so that nothing that was played is lost.
 *
 * @param path the file; need not be there
 */
public record RoundsFile(Path path) {
    /** A larger file was not written by this program. */
    private static final long MOST_BYTES = 10_000_000;

    /**
     * Returns all rounds; those of a line that is none, such as one that was cut off, are left out.
     *
     * @throws IOException if the file can't be read
     */
    public List<Played> all() throws IOException {
        List<Played> rounds = new ArrayList<>();
        if (!Files.exists(path)) {
            return rounds;
        }
        if (Files.size(path) > MOST_BYTES) {
            throw new IOException(path + " is larger than 10 MB");
        }
        for (String line : Files.readAllLines(path)) {
            round(line).ifPresent(rounds::add);
        }
        return rounds;
    }

    private static Optional<Played> round(String line) {
        try {
            return Optional.of(round(JsonForm.LINE.readTree(line)));
        } catch (JacksonException | IllegalArgumentException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    /**
     * Adds a round.
     *
     * @throws IOException if the disk refuses
     */
    public void add(Played round) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Files.writeString(
                path,
                JsonForm.LINE.writeValueAsString(round) + "\n",
                StandardCharsets.UTF_8,
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
    }

    private static Played round(JsonNode node) {
        JsonNode runs = node.required("runs");
        return new Played(
                node.required("source").asString(),
                node.required("seed").asLong(),
                node.required("round").asInt(),
                node.required("sent").asLong(),
                node.required("horizon_s").asDouble(),
                node.required("named").asString(),
                node.required("sureness").asDouble(),
                Played.Verdict.valueOf(node.required("verdict").asString().toUpperCase(Locale.ROOT)),
                IntStream.range(0, runs.size())
                        .mapToObj(it -> run(runs.get(it)))
                        .toList());
    }

    private static Played.Run run(JsonNode node) {
        return new Played.Run(
                node.required("mode").asString(),
                span(node.required("guess")),
                seconds(node.required("delivered_s")),
                span(node.required("simulated")));
    }

    private static Span span(JsonNode node) {
        return new Span(seconds(node.required("low_s")), seconds(node.required("high_s")));
    }

    private static double seconds(JsonNode node) {
        return node.isNull() ? Double.POSITIVE_INFINITY : node.asDouble();
    }
}
