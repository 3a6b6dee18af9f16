package org.ionohaul.waveform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table among the published reference results: comment lines, then CSV with a line of heads. */
public final class ReferenceFile {
    private static final Path FOLDER = Path.of("..", "results", "reference");
    private static final Pattern VERSION = Pattern.compile("<artifactId>ionohaul</artifactId>\\s*<version>([^<]+)<");

    private final StringBuilder text = new StringBuilder();

    public ReferenceFile comment(String line) {
        text.append("# ").append(line).append('\n');
        return this;
    }

    public ReferenceFile row(Object... cells) {
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i] instanceof Double number ? decimal(number) : String.valueOf(cells[i]);
            text.append(i == 0 ? "" : ",").append(cell);
        }
        text.append('\n');
        return this;
    }

    private static String decimal(double number) {
        return Double.isInfinite(number) ? "unreachable" : String.format(Locale.ROOT, "%.2f", number);
    }

    public void write(String name) {
        try {
            Files.writeString(FOLDER.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<CSVRecord> read(String name) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(Files.readString(FOLDER.resolve(name)), format)) {
            return parser.getRecords();
        }
    }

    /** Returns the version in the parent's pom. */
    public static String programVersion() {
        Matcher version = VERSION.matcher(pom());
        if (!version.find()) {
            throw new IllegalStateException("no version in ../pom.xml");
        }
        return version.group(1);
    }

    private static String pom() {
        try {
            return Files.readString(Path.of("..", "pom.xml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
