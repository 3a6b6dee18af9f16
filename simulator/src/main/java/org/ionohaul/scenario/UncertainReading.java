package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.TomlTable;

/**
 * How numbers are read that may be uncertain: {@code "12 dB"}, {@code "12 dB ± 3 dB"}, {@code "9 dB .. 15 dB"}, or a list
 * of weighted values.
 *
 * @param number how one number is read
 * @param width how a standard deviation is read
 * @param example how people write one number
 */
record UncertainReading(Kind<Double> number, Kind<Double> width, String example) {
    /** What the words for such a number end with. */
    static final String MARK = " that may be uncertain";

    private static final Pattern NORMAL = Pattern.compile("\\s*(?:±|\\+/?-)\\s*(?=\\d)");
    private static final Pattern RANGE = Pattern.compile("\\s*(?:\\.\\.\\.?|…)\\s*");

    Kind<Uncertain> kind() {
        return new Kind<>(number.words() + MARK, this::read);
    }

    private Uncertain read(Object value) throws WrongValue {
        if (value instanceof List<?> entries) {
            return weighted(entries);
        }
        return value instanceof String text ? spread(text) : new Uncertain.Known(number.read(value));
    }

    private Uncertain spread(String text) throws WrongValue {
        Optional<String[]> normal = halves(NORMAL, text);
        if (normal.isPresent()) {
            double deviation = width.read(normal.get()[1]);
            return checked(deviation > 0, new Uncertain.Normal(number.read(normal.get()[0]), deviation), text);
        }
        Optional<String[]> range = halves(RANGE, text);
        if (range.isPresent()) {
            double low = number.read(range.get()[0]);
            double high = number.read(range.get()[1]);
            return checked(high > low, new Uncertain.Range(low, high), text);
        }
        return new Uncertain.Known(number.read(text));
    }

    private Uncertain checked(boolean holds, Uncertain value, String text) throws WrongValue {
        if (holds) {
            return value;
        }
        throw new WrongValue(
                "\"" + text + "\" is no distribution",
                "write a value and a positive standard deviation (\"" + example
                        + " ± ...\") or a range from low to high");
    }

    private static Optional<String[]> halves(Pattern between, String text) {
        String[] halves = between.split(text, -1);
        return halves.length == 2 ? Optional.of(halves) : Optional.empty();
    }

    private Uncertain weighted(List<?> entries) throws WrongValue {
        List<Double> values = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (Object entry : entries) {
            Object value = entry instanceof TomlTable table ? table.get("value") : null;
            Object weight = entry instanceof TomlTable table ? table.get("weight") : null;
            if (value == null
                    || !(weight instanceof Number share && share.doubleValue() > 0 && share.doubleValue() < 1e9)) {
                throw wrongEntry();
            }
            values.add(number.read(value));
            weights.add(((Number) weight).doubleValue());
        }
        if (values.isEmpty()) {
            throw wrongEntry();
        }
        return new Uncertain.Weighted(values, weights);
    }

    private WrongValue wrongEntry() {
        return new WrongValue(
                "is no list of weighted values",
                "write [{ value = \"" + example + "\", weight = 2 }, ...] with finite weights above 0");
    }
}
