package org.ionohaul.fieldlog;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.scenario.CellTable;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.Spelling;
import org.ionohaul.scenario.WrongValue;

/** The cells of one run while it is being read; what is wrong with them is collected. */
final class LogCells {
    private final String file;
    private final CellTable.Row row;
    private final Map<LogColumn, Integer> places;
    private final Collection<Problem> problems;

    LogCells(String file, CellTable.Row row, Map<LogColumn, Integer> places, Collection<Problem> problems) {
        this.file = file;
        this.row = row;
        this.places = new EnumMap<>(places);
        this.problems = problems;
    }

    /** Turns a text into a value. */
    @FunctionalInterface
    interface Reading<T> {
        /** Returns the value; throws {@link WrongValue} if the text is none. */
        T read(String text) throws WrongValue;
    }

    String text(LogColumn column) {
        Integer place = places.get(column);
        return place == null ? "" : row.cell(place);
    }

    /** Returns what a cell says; empty if it is empty or wrong, which is noted. */
    <T> Optional<T> find(LogColumn column, Reading<T> reading) {
        String text = text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(reading.read(text));
        } catch (WrongValue e) {
            problem(column, e.message(), e.remedy());
        } catch (OutOfRange e) {
            problem(column, "\"" + text + "\" " + e.demand(), "");
        }
        return Optional.empty();
    }

    /** Returns what a cell says that must not be empty; empty if it is wrong, which is noted. */
    <T> Optional<T> need(LogColumn column, Reading<T> reading) {
        if (text(column).isEmpty() && places.containsKey(column)) {
            problem(column, "is empty", "write it, such as " + column.example());
        }
        return find(column, reading);
    }

    void problem(LogColumn column, String message, String remedy) {
        int place = places.getOrDefault(column, 0);
        problems.add(new Problem(file, row.line(), row.column(place), column.head(), message, remedy));
    }

    /** Returns how one of some words is read. */
    static <T> Reading<T> oneOf(List<T> values, Function<T, String> word) {
        Map<String, T> byWord = values.stream().collect(Collectors.toMap(word, Function.identity()));
        List<String> words = values.stream().map(word).toList();
        return text -> {
            T chosen = byWord.get(plain(text));
            if (chosen == null) {
                throw new WrongValue("\"" + text + "\" is not a valid choice", Spelling.advice(plain(text), words));
            }
            return chosen;
        };
    }

    static <E extends Enum<E>> Reading<E> oneOf(Class<E> type) {
        return oneOf(Stream.of(type.getEnumConstants()).toList(), LogCells::word);
    }

    private static String word(Enum<?> constant) {
        return plain(constant.name());
    }

    /** Returns a word as it is compared: capitals, spaces and underscores make no difference. */
    static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    }
}
