package org.ionohaul.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table as a spreadsheet writes it: cells between commas, semicolons or tabs, whichever the line of heads has most of; lines
 * that begin with # and empty lines are remarks.
 *
 * @param rows the lines that hold cells, the heads first; may be empty
 */
public record CellTable(List<Row> rows) {
    private static final char[] SEPARATORS = {',', ';', '\t'};

    /** Copies the list. */
    public CellTable {
        rows = List.copyOf(rows);
    }

    /**
     * One line of cells.
     *
     * @param line where it begins, from 1
     * @param cells what stands in it
     * @param columns where each cell begins, from 1; one a cell
     */
    public record Row(int line, List<String> cells, List<Integer> columns) {
        /** Copies the lists. */
        public Row {
            cells = List.copyOf(cells);
            columns = List.copyOf(columns);
        }

        /** Returns a cell without spaces around it; empty if the line is shorter. */
        public String cell(int index) {
            return index < cells.size() ? cells.get(index).strip() : "";
        }

        /** Returns where a cell begins, or would begin after the last one. */
        public int column(int index) {
            return index < columns.size()
                    ? columns.get(index)
                    : columns.isEmpty() ? 1 : columns.get(columns.size() - 1);
        }

        /**
         * Returns the complaint about cells beyond the heads; empty if there are none.
         *
         * @param file the table, as the user named it
         * @param heads how many heads there are
         */
        public Optional<Problem> surplus(String file, int heads) {
            return cells.stream().skip(heads).allMatch(String::isBlank)
                    ? Optional.empty()
                    : Optional.of(new Problem(
                            file,
                            line,
                            column(heads),
                            "",
                            "has more cells than there are heads",
                            "put a cell with a comma of its own into quotation marks"));
        }

        private boolean isEmpty() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /**
     * Reads a table from a file.
     *
     * @param files where its text comes from
     * @param file the file, as the user named it
     * @param problems hears what is wrong with the file as such
     * @return empty if something is
     */
    public static Optional<CellTable> read(SourceFiles files, Path file, Consumer<Problem> problems) {
        return read(files, file, files::text, problems);
    }

    /** Reads a table that may be long, as a program writes it; otherwise like {@link #read}. */
    public static Optional<CellTable> readLong(SourceFiles files, Path file, Consumer<Problem> problems) {
        return read(files, file, files::table, problems);
    }

    /** Where a text comes from. */
    @FunctionalInterface
    private interface Texts {
        String of(Path file) throws IOException;
    }

    private static Optional<CellTable> read(SourceFiles files, Path file, Texts texts, Consumer<Problem> problems) {
        try {
            return Optional.of(of(texts.of(file)));
        } catch (CharacterCodingException e) {
            problems.accept(
                    unreadable(file, "is not a text file in UTF-8", "save it from the spreadsheet as CSV in UTF-8"));
        } catch (IOException e) {
            problems.accept(unreadable(
                    file, files.exists(file) ? "can't be read: " + e.getMessage() : "there is no such file", ""));
        }
        return Optional.empty();
    }

    private static Problem unreadable(Path file, String message, String remedy) {
        return new Problem(file.toString(), 0, 0, "", message, remedy);
    }

    /**
     * Takes a text apart.
     *
     * @throws IOException if quotation marks don't pair; the message says where
     */
    private static CellTable of(String text) throws IOException {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        char separator = separatorOf(plain);
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .get();
        List<Row> rows = new ArrayList<>();
        int line = 1;
        int counted = 0;
        try (CSVParser parser = CSVParser.parse(plain, format)) {
            for (CSVRecord cells : parser) {
                int start = (int) cells.getCharacterPosition();
                // From where the last one began: tables may be long.
                line += (int) plain.substring(counted, start)
                        .chars()
                        .filter(it -> it == '\n')
                        .count();
                counted = start;
                Row row = new Row(line, cells.toList(), columns(plain, start, separator, cells.size()));
                if (!row.isEmpty()) {
                    rows.add(row);
                }
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return new CellTable(rows);
    }

    private static char separatorOf(String text) {
        String heads = text.lines()
                .filter(it -> !it.isBlank() && !it.startsWith("#"))
                .findFirst()
                .orElse("");
        int best = IntStream.range(0, SEPARATORS.length)
                .reduce((a, b) -> count(heads, SEPARATORS[b]) > count(heads, SEPARATORS[a]) ? b : a)
                .orElseThrow();
        return SEPARATORS[best];
    }

    private static long count(String text, char sign) {
        return text.chars().filter(it -> it == sign).count();
    }

    /** The library tells where a line begins, not where its cells do. */
    private static List<Integer> columns(String text, int start, char separator, int cells) {
        List<Integer> columns = new ArrayList<>(List.of(1));
        boolean isQuoted = false;
        for (int at = start; columns.size() < cells && at < text.length(); at++) {
            isQuoted ^= text.charAt(at) == '"';
            if (text.charAt(at) == separator && !isQuoted) {
                columns.add(at - start + 2);
            }
        }
        return columns;
    }
}
