package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.ionohaul.limits.OutOfRange;
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
        Optional<WrittenRange> normal = WrittenRange.around(text);
        if (normal.isPresent()) {
            double mean = number.read(normal.get().low());
            double deviation = width.read(normal.get().high());
            return distribution(() -> new Uncertain.Normal(mean, deviation), Kind.shown(text));
        }
        Optional<WrittenRange> range = WrittenRange.of(text);
        if (range.isPresent()) {
            double low = number.read(range.get().low());
            double high = number.read(range.get().high());
            if (low > high) {
                throw new WrongValue(Kind.shown(text) + " runs from high to low", "write the lower end first");
            }
            return distribution(() -> new Uncertain.Range(low, high), Kind.shown(text));
        }
        return new Uncertain.Known(number.read(text));
    }

    private Uncertain distribution(Supplier<Uncertain> described, String text) throws WrongValue {
        try {
            return described.get();
        } catch (OutOfRange e) {
            throw new WrongValue(
                    text + " is no distribution",
                    "write a value and a positive standard deviation (\"" + example
                            + " ± ...\"), a range from low to high, or [{ value = \"" + example
                            + "\", weight = 2 }, ...] with weights above 0");
        }
    }

    private Uncertain weighted(List<?> entries) throws WrongValue {
        List<Double> values = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (Object entry : entries) {
            if (entry instanceof TomlTable table
                    && table.contains("value")
                    && table.get("weight") instanceof Number weight) {
                values.add(number.read(Objects.requireNonNull(table.get("value"))));
                weights.add(weight.doubleValue());
            }
        }
        boolean isWhole = values.size() == entries.size();
        return distribution(() -> new Uncertain.Weighted(values, isWhole ? weights : List.of()), "the list");
    }
}
