package org.ionohaul.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A scenario key and the values to try for it.
 *
 * @param key its full name, such as {@code near.snr} or {@code modes.NAME.arq.window}
 * @param values the values as they would stand in the file, at least two
 */
public record KeySweep(String key, List<String> values) {
    private static final int USUAL_COUNT = 7;
    private static final int MOST_COUNT = 99;
    private static final String NUMBER = "([+\\-]?\\d+(?:\\.\\d+)?)";
    private static final Pattern RANGE = Pattern.compile(NUMBER + "\\s*([^\\s\\d.][^\\s.]*)?\\s*\\.\\.\\s*" + NUMBER
            + "\\s*([^\\s\\d][^\\s]*?)?(?:\\s*:\\s*(\\d+))?");

    /** Copies the values. */
    public KeySweep {
        values = List.copyOf(values);
        if (values.size() < 2) {
            throw new IllegalArgumentException("values must be at least two: " + values);
        }
    }

    /**
     * Returns the sweep that a text stands for: {@code 6 dB..18 dB}, {@code 6..18 dB} or, with the number of values,
     * {@code 6..18 dB : 5}; empty if it is a single value. Seven values if not said otherwise, evenly spread; whole
     * numbers where both ends are, as counts take no others.
     *
     * @param key the key
     * @param text what stands after the equals sign
     * @throws IllegalArgumentException if the range has two different units, or one value or more than 99
     */
    public static Optional<KeySweep> parse(String key, String text) {
        Matcher range = RANGE.matcher(text.strip());
        if (!range.matches()) {
            return Optional.empty();
        }
        String unit = unit(Optional.ofNullable(range.group(2)), Optional.ofNullable(range.group(4)), text);
        int count = Optional.ofNullable(range.group(5)).map(Integer::parseInt).orElse(USUAL_COUNT);
        if (count < 2 || count > MOST_COUNT) {
            throw new IllegalArgumentException("a range takes from 2 to 99 values: \"" + text + "\"");
        }
        return Optional.of(new KeySweep(
                key,
                numbers(new BigDecimal(range.group(1)), new BigDecimal(range.group(3)), count).stream()
                        .map(number -> number + unit)
                        .toList()));
    }

    private static String unit(Optional<String> first, Optional<String> second, String text) {
        if (first.isPresent() && second.isPresent() && !first.get().equals(second.get())) {
            throw new IllegalArgumentException("a range has one unit: \"" + text + "\"");
        }
        return second.or(() -> first).map(unit -> " " + unit).orElse("");
    }

    private static List<String> numbers(BigDecimal low, BigDecimal high, int count) {
        boolean areWhole = low.scale() <= 0 && high.scale() <= 0;
        return IntStream.range(0, count)
                .mapToObj(i -> between(low, high, i, count - 1))
                .map(number -> areWhole ? number.setScale(0, RoundingMode.HALF_UP) : number)
                .map(KeySweep::plain)
                .distinct()
                .toList();
    }

    private static BigDecimal between(BigDecimal low, BigDecimal high, int step, int steps) {
        return high.subtract(low)
                .multiply(BigDecimal.valueOf(step))
                .divide(BigDecimal.valueOf(steps), MathContext.DECIMAL64)
                .add(low);
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(new MathContext(6)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
