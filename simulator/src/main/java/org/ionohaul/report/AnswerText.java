package org.ionohaul.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.picture.WordBreaks;
import org.ionohaul.rendering.StyledLine;
import org.ionohaul.rendering.StyledLine.Piece;
import org.ionohaul.rendering.TextWrap;

/**
 * The {@link AnswerTable} on a terminal: columns share the width there is, words wrap within them, and columns that find no
 * room come below.
 */
final class AnswerText {
    private static final String GAP = "  ";
    private static final int NARROWEST = 12;

    private final AnswerTable table;
    private final int mostCharacters;

    /** Prepares the table for lines of so many characters, 40 or more. */
    AnswerText(AnswerTable table, int mostCharacters) {
        this.table = table;
        this.mostCharacters = mostCharacters;
    }

    /** Returns the lines, none of them longer. */
    List<StyledLine> lines() {
        List<List<List<Piece>>> all =
                table.blocks().stream().flatMap(it -> rows(it).stream()).toList();
        int columns = all.stream().mapToInt(List::size).max().orElse(0);
        int together = Math.min(columns, Math.max(2, mostCharacters / (NARROWEST + GAP.length()))) - 1;
        List<StyledLine> lines = new ArrayList<>();
        for (int from = 1; from < columns; from += together) {
            List<Integer> shown = Stream.concat(
                            Stream.of(0),
                            IntStream.range(from, Math.min(columns, from + together))
                                    .boxed())
                    .toList();
            List<Integer> widths = widths(all, shown);
            table.blocks().forEach(it -> addBlock(lines, it, shown, widths));
        }
        return lines;
    }

    private void addBlock(
            List<StyledLine> lines, AnswerTable.Block block, List<Integer> columns, List<Integer> widths) {
        List<Integer> own =
                columns.stream().filter(it -> it <= block.heads().size()).toList();
        if (own.size() == 1) {
            return;
        }
        lines.add(StyledLine.plain(""));
        TextWrap.lines(block.what(), "", mostCharacters).forEach(it -> lines.add(StyledLine.strong(cut(it))));
        List<List<List<Piece>>> rows = rows(block);
        addRow(lines, rows.get(0), own, widths);
        int width = IntStream.range(0, own.size()).map(widths::get).sum() + GAP.length() * (own.size() - 1);
        lines.add(StyledLine.plain(GAP + "-".repeat(width)));
        rows.subList(1, rows.size()).forEach(it -> addRow(lines, it, own, widths));
    }

    /** A word can be longer than a line. */
    private String cut(String line) {
        return line.length() <= mostCharacters ? line : line.substring(0, mostCharacters);
    }

    private static void addRow(
            List<StyledLine> lines, List<List<Piece>> row, List<Integer> columns, List<Integer> widths) {
        List<List<List<Piece>>> cells = IntStream.range(0, columns.size())
                .mapToObj(i -> wrapped(row.get(columns.get(i)), widths.get(i)))
                .toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < height; i++) {
            List<Piece> line = new ArrayList<>();
            int missing = 0;
            for (int column = 0; column < cells.size(); column++) {
                List<Piece> cell =
                        i < cells.get(column).size() ? cells.get(column).get(i) : List.of();
                if (!cell.isEmpty()) {
                    line.add(Piece.plain(" ".repeat(missing) + GAP));
                    line.addAll(cell);
                    missing = 0;
                } else {
                    missing += GAP.length();
                }
                missing += widths.get(column) - length(cell);
            }
            lines.add(new StyledLine(line));
        }
    }

    /** Returns a block's cells, heads first, each as words that stay whole; an empty word begins a new line. */
    private List<List<List<Piece>>> rows(AnswerTable.Block block) {
        Stream<List<List<Piece>>> heads = Stream.of(Stream.concat(Stream.of(""), block.heads().stream())
                .map(AnswerText::words)
                .toList());
        return Stream.concat(
                        heads,
                        block.rows().stream()
                                .map(row -> Stream.concat(
                                                Stream.of(words(row.route())),
                                                row.answers().stream().map(this::words))
                                        .toList()))
                .toList();
    }

    private List<Piece> words(AnswerTable.Answer answer) {
        List<Piece> words = new ArrayList<>();
        List<String> modes = table.shown(answer);
        for (String mode : modes) {
            for (String word : mode.split(" ", -1)) {
                words.add(new Piece(word, true, table.order().of(mode)));
            }
            String after = table.after(answer, mode);
            if (after.startsWith(" ")) {
                words.add(Piece.plain(after.strip()));
            } else {
                Piece last = words.remove(words.size() - 1);
                words.add(new Piece(last.text() + after, last.isStrong(), last.mode()));
            }
        }
        if (!modes.isEmpty()) {
            words.add(Piece.plain(""));
        }
        words.addAll(words(answer.figure() + (answer.safe().isEmpty() ? "" : ", " + answer.safe())));
        return words;
    }

    private static List<Piece> words(String text) {
        return WordBreaks.parts(text).stream().map(Piece::plain).toList();
    }

    /**
     * Returns the widths of some columns: what they need or, where that is too much, less where that makes fewest lines more, and
     * words whole while that is possible.
     */
    private List<Integer> widths(List<List<List<Piece>>> rows, List<Integer> columns) {
        List<Integer> widths = columns.stream()
                .map(column -> widest(cells(rows, column).flatMap(it -> wrapped(it, mostCharacters).stream())))
                .collect(Collectors.toCollection(ArrayList::new));
        List<Integer> words = columns.stream()
                .map(column -> widest(cells(rows, column).flatMap(List::stream).map(List::of)))
                .toList();
        int room = mostCharacters - GAP.length() * columns.size();
        while (widths.stream().mapToInt(it -> it).sum() > room) {
            int narrowed = IntStream.range(0, widths.size())
                    .boxed()
                    .filter(it -> widths.get(it) > NARROWEST)
                    .min(Comparator.<Integer, Boolean>comparing(it -> widths.get(it) <= words.get(it))
                            .thenComparing(it -> lines(rows, columns, with(widths, it, widths.get(it) - 1)))
                            .thenComparing(it -> -widths.get(it)))
                    .orElseThrow();
            int width = widths.get(narrowed) - 1;
            widths.set(narrowed, widest(cells(rows, columns.get(narrowed)).flatMap(it -> wrapped(it, width).stream())));
        }
        return widths;
    }

    private static Stream<List<Piece>> cells(List<List<List<Piece>>> rows, int column) {
        return rows.stream().filter(row -> column < row.size()).map(row -> row.get(column));
    }

    private static int widest(Stream<List<Piece>> lines) {
        return lines.mapToInt(AnswerText::length).max().orElse(0);
    }

    private static List<Integer> with(List<Integer> widths, int column, int width) {
        List<Integer> changed = new ArrayList<>(widths);
        changed.set(column, width);
        return changed;
    }

    /** Returns how many lines rows take. */
    private static int lines(List<List<List<Piece>>> rows, List<Integer> columns, List<Integer> widths) {
        return rows.stream()
                .mapToInt(row -> IntStream.range(0, columns.size())
                        .filter(i -> columns.get(i) < row.size())
                        .map(i ->
                                wrapped(row.get(columns.get(i)), widths.get(i)).size())
                        .max()
                        .orElse(0))
                .sum();
    }

    private static List<List<Piece>> wrapped(List<Piece> words, int width) {
        List<List<Piece>> lines = new ArrayList<>(List.of(new ArrayList<>()));
        for (Piece word : words) {
            List<Piece> line = lines.get(lines.size() - 1);
            if (word.text().isEmpty()) {
                lines.add(new ArrayList<>());
                continue;
            }
            if (!line.isEmpty() && length(line) + 1 + word.text().length() > width) {
                line = new ArrayList<>();
                lines.add(line);
            }
            if (!line.isEmpty()) {
                line.add(Piece.plain(" "));
            }
            Piece rest = word;
            while (rest.text().length() > width) {
                line.add(new Piece(rest.text().substring(0, width), rest.isStrong(), rest.mode()));
                rest = new Piece(rest.text().substring(width), rest.isStrong(), rest.mode());
                line = new ArrayList<>();
                lines.add(line);
            }
            line.add(rest);
        }
        lines.removeIf(List::isEmpty);
        return lines;
    }

    private static int length(List<Piece> line) {
        return line.stream().mapToInt(it -> it.text().length()).sum();
    }
}
