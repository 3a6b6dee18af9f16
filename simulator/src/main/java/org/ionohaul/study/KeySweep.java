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
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.scenario.WrittenQuantity;
import org.ionohaul.scenario.WrittenRange;
import org.ionohaul.scenario.WrongValue;

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

    /** So many decimals after a number from 1 on could be read as thousands: 3.333. */
    private static final int THOUSANDS_DECIMALS = 3;

    private static final String WANTED = "takes from 2 to 99 values, no two alike";
    private static final String BETWEEN_CHOICES = "|";
    private static final Pattern RANGE = Pattern.compile("(.*\\S)\\s*:\\s*(\\d+)");
    private static final Pattern QUANTITY = Pattern.compile("([+\\-]?\\d+(?:\\.\\d+)?)\\s*(\\D*)");
    private static final Pattern READING = Pattern.compile("[Ss](\\d)(\\s*\\+.*)?");

    /** Copies the values. */
    public KeySweep {
        values = List.copyOf(values);
        OutOfRange.unless(areDifferent(values), "values", WANTED, String.join(", ", values));
    }

    private static boolean areDifferent(List<String> values) {
        long different = values.stream().filter(it -> !it.isBlank()).distinct().count();
        return different >= 2 && different <= MOST_COUNT && different == values.size();
    }

    /**
     * Returns the sweep that a text stands for: a list, {@code rural | city}, or a range, {@code 6 dB..18 dB},
     * {@code 6..18 dB}, {@code S5..S8} or, with the number of values, {@code 6..18 dB : 5}; empty if it is a single value. A
     * range has seven values if not said otherwise, evenly spread to four figures; without a unit whole numbers where both
     * ends are, as counts take no others; meter readings are whole S-units.
     *
     * @param key the key
     * @param text what stands after the equals sign
     * @throws WrongValue if the range has two different units, or there are fewer than two values, more than 99, or the
     *     same twice
     */
    public static Optional<KeySweep> parse(String key, String text) throws WrongValue {
        List<String> values = text.contains(BETWEEN_CHOICES)
                ? Stream.of(text.split(Pattern.quote(BETWEEN_CHOICES), -1))
                        .map(String::strip)
                        .toList()
                : range(text);
        if (values.isEmpty()) {
            return Optional.empty();
        }
        if (!areDifferent(values)) {
            throw new WrongValue(WANTED + ", not " + String.join(", ", values), "");
        }
        return Optional.of(new KeySweep(key, values));
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

    /** Returns the values of a range; none if the text is no range. */
    private static List<String> range(String text) throws WrongValue {
        Matcher counted = RANGE.matcher(text.strip());
        boolean isCounted = counted.matches();
        Optional<WrittenRange> range = WrittenRange.of(isCounted ? counted.group(1) : text);
        if (range.isEmpty()) {
            return List.of();
        }
        Matcher low = READING.matcher(range.get().low());
        Matcher high = READING.matcher(range.get().high());
        if (low.matches() && high.matches()) {
            return readings(low, high, isCounted ? count(counted.group(2)) : MOST_COUNT);
        }
        return numbers(range.get(), text, isCounted ? count(counted.group(2)) : USUAL_COUNT);
    }

    private static List<String> numbers(WrittenRange range, String text, int count) throws WrongValue {
        Optional<WrittenQuantity> low = WrittenQuantity.of(range.low());
        Optional<WrittenQuantity> high = WrittenQuantity.of(range.high());
        if (low.isEmpty() || high.isEmpty()) {
            return List.of();
        }
        String unit = high.get().unit();
        if (!unit.equals(low.get().unit())) {
            throw new WrongValue("a range has one unit: \"" + text + "\"", "");
        }
        boolean areWhole = unit.isEmpty()
                && low.get().number().scale() <= 0
                && high.get().number().scale() <= 0;
        return spread(low.get().number(), high.get().number(), count, areWhole)
                .map(number -> unit.isEmpty() ? number : number + " " + unit)
                .toList();
    }

    private static List<String> readings(Matcher low, Matcher high, int count) throws WrongValue {
        if (low.group(2) != null || high.group(2) != null) {
            throw new WrongValue("a range of meter readings ends at S9", "write a list, such as \"S7 | S9 | S9+10\"");
        }
        BigDecimal from = new BigDecimal(low.group(1));
        BigDecimal to = new BigDecimal(high.group(1));
        int units = from.subtract(to).abs().intValue() + 1;
        return spread(from, to, Math.max(2, Math.min(count, units)), true)
                .map(unit -> "S" + unit)
                .toList();
    }

    private static Stream<String> spread(BigDecimal low, BigDecimal high, int count, boolean areWhole) {
        return IntStream.range(0, count)
                .mapToObj(i -> between(low, high, i, count - 1))
                .map(number -> areWhole ? number.setScale(0, RoundingMode.HALF_UP) : number)
                .map(KeySweep::plain)
                .distinct();
    }

    private static int count(String text) throws WrongValue {
        int count = new BigDecimal(text).min(BigDecimal.valueOf(MOST_COUNT + 1)).intValue();
        if (count < 2 || count > MOST_COUNT) {
            throw new WrongValue("takes from 2 to 99 values, not " + text, "");
        }
        return count;
    }

    private static BigDecimal between(BigDecimal low, BigDecimal high, int step, int steps) {
        return high.subtract(low)
                .multiply(BigDecimal.valueOf(step))
                .divide(BigDecimal.valueOf(steps), MathContext.DECIMAL64)
                .add(low);
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(new MathContext(FIGURES)).stripTrailingZeros();
        if (rounded.scale() == THOUSANDS_DECIMALS && rounded.abs().compareTo(BigDecimal.ONE) >= 0) {
            rounded = rounded.setScale(THOUSANDS_DECIMALS - 1, RoundingMode.HALF_UP)
                    .stripTrailingZeros();
        }
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
