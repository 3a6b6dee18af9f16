package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.channel.MeterReading;
import org.ionohaul.limits.OutOfRange;
import org.tomlj.TomlTable;

/**
 * An uncertain input in the numbers and the unit that its scenario is written in.
 *
 * @param values its distribution, in that unit
 * @param unit the unit; {@link #CLOCK} for a time of day
 * @param deviationUnit that of a standard deviation, such as dB beside dBm
 */
public record WrittenInput(Uncertain values, String unit, String deviationUnit) {
    /** The unit of a time of day. */
    public static final String CLOCK = "minutes after midnight";

    private static final double SECONDS_PER_MINUTE = 60;
    private static final long DAY_SECONDS = 86_400;

    private static final Pattern QUANTITY =
            Pattern.compile("(" + WrittenNumber.PATTERN + ")\\s*([^\\s\\d+\\-−–.,][^\\s\\d]*)");

    /** A list of equally likely values that stands for a distribution. */
    private static final int VALUES = 10;

    /**
     * Returns what a value of a file says; empty if it is no distribution of plain quantities of one unit, such as a category of
     * noise.
     *
     * @param value text, or a list of tables with value and weight
     */
    static Optional<WrittenInput> of(Object value) {
        try {
            return value instanceof List<?> entries ? weighted(entries) : spread(String.valueOf(value));
        } catch (OutOfRange e) {
            return Optional.empty();
        }
    }

    private static Optional<WrittenInput> spread(String text) {
        Optional<WrittenRange> normal = WrittenRange.around(text);
        if (normal.isPresent()) {
            return Amount.of(normal.get().low())
                    .flatMap(mean -> Amount.of(normal.get().high())
                            .filter(it -> it.unit().equals(mean.deviationUnit()))
                            .map(it -> new WrittenInput(
                                    new Uncertain.Normal(mean.number(), it.number()), mean.unit(), it.unit())));
        }
        return WrittenRange.of(text)
                .flatMap(range -> Amount.of(range.low())
                        .flatMap(low -> Amount.of(range.high())
                                .filter(high -> high.unit().equals(low.unit()))
                                .map(high -> new WrittenInput(
                                        new Uncertain.Range(low.number(), high.number()),
                                        low.unit(),
                                        low.deviationUnit()))));
    }

    private static Optional<WrittenInput> weighted(List<?> entries) {
        List<Amount> amounts = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (Object entry : entries) {
            if (entry instanceof TomlTable table && table.get("weight") instanceof Number weight) {
                Amount.of(String.valueOf(table.get("value"))).ifPresent(amounts::add);
                weights.add(weight.doubleValue());
            }
        }
        boolean isOfOneUnit = amounts.stream().map(Amount::unit).distinct().count() == 1;
        return amounts.size() == entries.size() && isOfOneUnit
                ? Optional.of(new WrittenInput(
                        new Uncertain.Weighted(
                                amounts.stream().map(Amount::number).toList(), weights),
                        amounts.get(0).unit(),
                        amounts.get(0).deviationUnit()))
                : Optional.empty();
    }

    /** Returns the value below which the true one lies with some probability, above 0, below 1, in the written unit. */
    public double quantile(double probability) {
        return values.quantile(probability);
    }

    /**
     * Returns how a narrower distribution is written in a scenario file: a mean with its deviation where it was one, other weights
     * where it was a list, equally likely values where it was a range.
     *
     * @param draws draws of the narrower distribution, by their probability under this one; at least one
     */
    public String narrowed(double[] draws) {
        double[] numbers = DoubleStream.of(draws).map(this::quantile).sorted().toArray();
        if (values instanceof Uncertain.Weighted list) {
            return list(list.values(), it -> {
                long hits =
                        DoubleStream.of(numbers).filter(number -> number == it).count();
                return Math.max(1, Math.round(1000.0 * hits / numbers.length));
            });
        }
        double mean = DoubleStream.of(numbers).average().orElseThrow();
        double deviation = Math.sqrt(DoubleStream.of(numbers)
                .map(it -> (it - mean) * (it - mean))
                .average()
                .orElseThrow());
        if (values instanceof Uncertain.Normal && deviation > 0) {
            return "\"" + written(mean, deviation) + " ± " + rounded(deviation, deviation) + " " + deviationUnit + "\"";
        }
        List<Double> spread = IntStream.range(0, VALUES)
                .mapToObj(it -> Double.parseDouble(
                        rounded(numbers[(int) ((it + 0.5) / VALUES * numbers.length)], deviation / 2)))
                .distinct()
                .toList();
        return list(spread, it -> 1L);
    }

    private String list(List<Double> numbers, ToLongFunction<Double> weight) {
        return numbers.stream()
                .map(it -> "{ value = \"" + plain(it) + "\", weight = " + weight.applyAsLong(it) + " }")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    /** Returns the values of a list with their unit, each once, in the order of the file; none if it is no list. */
    public List<String> choices() {
        return values instanceof Uncertain.Weighted list
                ? list.values().stream().distinct().map(this::plain).toList()
                : List.of();
    }

    /**
     * Returns how often each of the {@link #choices} comes up, from 0 to 1.
     *
     * @param draws draws, by their probability under this distribution; at least one
     */
    public List<Double> shares(double[] draws) {
        return choices().stream()
                .map(choice -> DoubleStream.of(draws)
                                .filter(it -> plain(quantile(it)).equals(choice))
                                .count()
                        / (double) draws.length)
                .toList();
    }

    /** Returns a number of this input with its unit, as exact as its spread deserves. */
    public String text(double number) {
        return written(number, figureOf());
    }

    /** Returns two numbers of this input with their unit, such as {@code 5.1 to 6.2 dB}. */
    public String range(double low, double high) {
        double least = Math.min(low, high);
        return (isClock() ? clock(least) : rounded(least, figureOf())) + " to " + text(Math.max(low, high));
    }

    /** A tenth of what 8 of 10 draws lie within. */
    private double figureOf() {
        return Math.abs(quantile(0.9) - quantile(0.1)) / 10;
    }

    /** Returns whether it is a time of day. */
    public boolean isClock() {
        return unit.equals(CLOCK);
    }

    private String written(double number, double deviation) {
        return isClock() ? clock(number) : rounded(number, deviation) + " " + unit;
    }

    private String plain(double number) {
        return isClock()
                ? clock(number)
                : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString() + " " + unit;
    }

    /** A time of day to the second, such as {@code 19:10} or {@code 19:10:24}. */
    private static String clock(double minutes) {
        return LocalTime.ofSecondOfDay(Math.floorMod(Math.round(minutes * SECONDS_PER_MINUTE), DAY_SECONDS))
                .toString();
    }

    /** Two figures of the deviation. */
    private static String rounded(double number, double deviation) {
        int decimals = deviation > 0 ? (int) Math.max(0, 1 - Math.floor(Math.log10(deviation))) : 3;
        return BigDecimal.valueOf(number)
                .setScale(Math.min(9, decimals), RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    /** A number with its unit; a meter reading is one in dBm, a time of day one in minutes. */
    private record Amount(double number, String unit) {
        static Optional<Amount> of(String text) {
            String plain = WrittenText.plain(text);
            Optional<Amount> read = MeterReading.parse(plain)
                    .map(it -> new Amount(it.dbm(), "dBm"))
                    .or(() -> ofClock(plain));
            Matcher parts = QUANTITY.matcher(plain);
            if (read.isPresent() || !parts.matches()) {
                return read;
            }
            List<BigDecimal> meanings = WrittenNumber.of(parts.group(1)).meanings();
            return meanings.stream()
                    .findFirst()
                    .map(it -> new Amount(it.doubleValue(), Objects.requireNonNull(parts.group(2))));
        }

        private static Optional<Amount> ofClock(String text) {
            try {
                return Optional.of(new Amount(Quantity.clockSeconds(text) / SECONDS_PER_MINUTE, CLOCK));
            } catch (WrongValue e) {
                return Optional.empty();
            }
        }

        String deviationUnit() {
            return unit.startsWith("dB") ? "dB" : unit.equals(CLOCK) ? "min" : unit;
        }
    }
}
