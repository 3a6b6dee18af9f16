package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
 * @param unit the unit
 * @param deviationUnit that of a standard deviation, such as dB beside dBm
 */
public record WrittenInput(Uncertain values, String unit, String deviationUnit) {
    private static final Pattern QUANTITY =
            Pattern.compile("(" + WrittenNumber.PATTERN + ")\\s*([^\\s\\d+\\-−–.,][^\\s\\d]*)");

    /** A list of equally likely values that stands for a distribution. */
    private static final int VALUES = 10;

    /**
     * Returns what a value of a file says; empty if it is no distribution of plain quantities of one unit: a time of day, or a
     * category of noise.
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
            return "\"" + rounded(mean, deviation) + " " + unit + " ± " + rounded(deviation, deviation) + " "
                    + deviationUnit + "\"";
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
                .map(it -> "{ value = \""
                        + BigDecimal.valueOf(it).stripTrailingZeros().toPlainString() + " " + unit + "\", weight = "
                        + weight.applyAsLong(it) + " }")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    /**
     * Returns how often each value of a list comes up, such as {@code 14 dB 33 %, 8 dB 67 %}; empty if it is no list.
     *
     * @param draws draws, by their probability under this distribution; at least one
     */
    public Optional<String> shares(double[] draws) {
        if (!(values instanceof Uncertain.Weighted list)) {
            return Optional.empty();
        }
        return Optional.of(list.values().stream()
                .distinct()
                .map(value -> {
                    long hits = DoubleStream.of(draws)
                            .filter(it -> quantile(it) == value)
                            .count();
                    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString() + " " + unit + " "
                            + Math.round(100.0 * (double) hits / draws.length) + " %";
                })
                .collect(Collectors.joining(", ")));
    }

    /** Returns a number of this input with its unit, as exact as its spread deserves. */
    public String text(double number) {
        return figure(number) + " " + unit;
    }

    /** Returns two numbers of this input with their unit, such as {@code 5.1 to 6.2 dB}. */
    public String range(double low, double high) {
        return figure(Math.min(low, high)) + " to " + text(Math.max(low, high));
    }

    private String figure(double number) {
        return rounded(number, Math.abs(quantile(0.9) - quantile(0.1)) / 10);
    }

    /** Two figures of the deviation. */
    private static String rounded(double number, double deviation) {
        int decimals = deviation > 0 ? (int) Math.max(0, 1 - Math.floor(Math.log10(deviation))) : 3;
        return BigDecimal.valueOf(number)
                .setScale(Math.min(9, decimals), RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    /** A number with its unit; a meter reading is one in dBm. */
    private record Amount(double number, String unit) {
        static Optional<Amount> of(String text) {
            String plain = WrittenText.plain(text);
            Optional<Amount> read = MeterReading.parse(plain).map(it -> new Amount(it.dbm(), "dBm"));
            Matcher parts = QUANTITY.matcher(plain);
            if (read.isPresent() || !parts.matches()) {
                return read;
            }
            List<BigDecimal> meanings = WrittenNumber.of(parts.group(1)).meanings();
            return meanings.stream()
                    .findFirst()
                    .map(it -> new Amount(it.doubleValue(), Objects.requireNonNull(parts.group(2))));
        }

        String deviationUnit() {
            return unit.startsWith("dB") ? "dB" : unit;
        }
    }
}
