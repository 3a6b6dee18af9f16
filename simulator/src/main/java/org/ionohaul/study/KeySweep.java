package org.ionohaul.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A scenario key and the values to try for it.
 *
 * @param key its full name, such as {@code near.snr} or {@code modes.NAME.arq.window}
 * @param values the values as they would stand in the file, from two to 99, no two alike
 */
public record KeySweep(String key, List<String> values) {
    private static final int USUAL_COUNT = 7;
    private static final int MOST_COUNT = 99;
    private static final int FIGURES = 4;
    private static final String BETWEEN_CHOICES = "|";
    private static final String NUMBER = "([+\\-]?\\d+(?:\\.\\d+)?)";
    private static final Pattern RANGE = Pattern.compile(NUMBER + "\\s*([^\\s\\d.][^\\s.]*)?\\s*\\.\\.\\s*" + NUMBER
            + "\\s*([^\\s\\d][^\\s]*?)?(?:\\s*:\\s*(\\d+))?");
    private static final Pattern QUANTITY = Pattern.compile(NUMBER + "\\s*(\\D*)");

    /** Copies the values. */
    public KeySweep {
        values = List.copyOf(values);
        long different = values.stream().filter(it -> !it.isBlank()).distinct().count();
        if (different < 2 || different > MOST_COUNT || different < values.size()) {
            throw new IllegalArgumentException("takes from 2 to 99 values, no two alike: " + String.join(", ", values));
        }
    }

    /**
     * Returns the sweep that a text stands for: a list, {@code rural | city}, or a range, {@code 6 dB..18 dB},
     * {@code 6..18 dB} or, with the number of values, {@code 6..18 dB : 5}; empty if it is a single value. A range has
     * seven values if not said otherwise, evenly spread to four figures; without a unit whole numbers where both ends are, as
     * counts take no others.
     *
     * @param key the key
     * @param text what stands after the equals sign
     * @throws IllegalArgumentException if the range has two different units, or there are fewer than two values, more than
     *     99, or the same twice
     */
    public static Optional<KeySweep> parse(String key, String text) {
        if (text.contains(BETWEEN_CHOICES)) {
            return Optional.of(new KeySweep(
                    key,
                    Stream.of(text.split(Pattern.quote(BETWEEN_CHOICES), -1))
                            .map(String::strip)
                            .toList()));
        }
        Matcher range = RANGE.matcher(text.strip());
        return range.matches() ? Optional.of(new KeySweep(key, values(range, text))) : Optional.empty();
    }

    /** Returns the first value. */
    public String first() {
        return values.get(0);
    }

    /** Returns the last value. */
    public String last() {
        return values.get(values.size() - 1);
    }

    /** Returns the values as bare numbers; empty if some are no numbers or they have not all the same unit. */
    public List<Double> numbers() {
        List<Matcher> quantities = values.stream().map(QUANTITY::matcher).toList();
        boolean areAlike = quantities.stream().allMatch(Matcher::matches)
                && quantities.stream().map(it -> it.group(2)).distinct().count() == 1;
        return areAlike
                ? quantities.stream().map(it -> Double.valueOf(it.group(1))).toList()
                : List.of();
    }

    private static List<String> values(Matcher range, String text) {
        String unit = unit(Optional.ofNullable(range.group(2)), Optional.ofNullable(range.group(4)), text);
        int count = Optional.ofNullable(range.group(5)).map(KeySweep::count).orElse(USUAL_COUNT);
        BigDecimal low = new BigDecimal(range.group(1));
        BigDecimal high = new BigDecimal(range.group(3));
        boolean areWhole = unit.isEmpty() && low.scale() <= 0 && high.scale() <= 0;
        return IntStream.range(0, count)
                .mapToObj(i -> between(low, high, i, count - 1))
                .map(number -> areWhole ? number.setScale(0, RoundingMode.HALF_UP) : number)
                .map(KeySweep::plain)
                .distinct()
                .map(number -> number + unit)
                .toList();
    }

    private static int count(String text) {
        int count = new BigDecimal(text).min(BigDecimal.valueOf(MOST_COUNT + 1)).intValue();
        if (count < 2 || count > MOST_COUNT) {
            throw new IllegalArgumentException("takes from 2 to 99 values, not " + text);
        }
        return count;
    }

    private static String unit(Optional<String> first, Optional<String> second, String text) {
        if (first.isPresent() && second.isPresent() && !first.get().equals(second.get())) {
            throw new IllegalArgumentException("a range has one unit: \"" + text + "\"");
        }
        return second.or(() -> first).map(unit -> " " + unit).orElse("");
    }

    private static BigDecimal between(BigDecimal low, BigDecimal high, int step, int steps) {
        return high.subtract(low)
                .multiply(BigDecimal.valueOf(step))
                .divide(BigDecimal.valueOf(steps), MathContext.DECIMAL64)
                .add(low);
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(new MathContext(FIGURES)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
