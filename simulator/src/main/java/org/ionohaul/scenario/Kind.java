package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ionohaul.channel.MeterReading;

/**
 * What may stand after a key, and how it is read.
 *
 * @param words what it is called in a sentence, such as "a time"
 * @param reading turns a value of the file into one of the program
 */
record Kind<T>(String words, Reading<T> reading) {
    private static final Pattern FRACTION = Pattern.compile("(\\d+)\\s*/\\s*(\\d+)");
    private static final Pattern DECIMAL = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern PERCENT = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*%");

    private static final double LONGEST_SECONDS = 1000 * 3600;

    /** Turns a value of the file into one of the program. */
    @FunctionalInterface
    interface Reading<T> {
        /** Returns the value; throws {@link WrongValue} if it is not of this kind. */
        T read(Object value) throws WrongValue;
    }

    T read(Object value) throws WrongValue {
        return reading.read(value);
    }

    boolean canRead(Object value) {
        try {
            read(value);
            return true;
        } catch (WrongValue e) {
            return false;
        }
    }

    static Kind<String> text() {
        return new Kind<>("text", value -> {
            if (value instanceof String text && !text.isBlank()) {
                return text;
            }
            throw new WrongValue(shown(value) + " is not text", "write a few words in quotation marks");
        });
    }

    static Kind<Boolean> flag() {
        return new Kind<>("true or false", value -> {
            if (value instanceof Boolean flag) {
                return flag;
            }
            throw new WrongValue(
                    shown(value) + " is neither true nor false", "write true or false, without quotation marks");
        });
    }

    static Kind<Integer> count() {
        return wholeNumber().map("a whole number", value -> {
            if (value == value.intValue()) {
                return value.intValue();
            }
            throw new WrongValue(value + " is too large", "write a whole number of at most " + Integer.MAX_VALUE);
        });
    }

    static Kind<Long> wholeNumber() {
        return new Kind<>("a whole number", value -> {
            if (value instanceof Long number) {
                return number;
            }
            throw new WrongValue(
                    shown(value) + " is not a whole number", "write a whole number, without quotation marks");
        });
    }

    static Kind<Double> share() {
        return new Kind<>("a share", value -> {
            if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
                return number.doubleValue();
            }
            if (value instanceof String text) {
                if (DECIMAL.matcher(text.strip()).matches()) {
                    return Double.parseDouble(text.strip());
                }
                Matcher percent = PERCENT.matcher(text.strip());
                if (percent.matches()) {
                    return Double.parseDouble(percent.group(1)) / 100;
                }
                Matcher fraction = FRACTION.matcher(text.strip());
                if (fraction.matches() && Long.parseLong(fraction.group(2)) > 0) {
                    return Double.parseDouble(fraction.group(1)) / Long.parseLong(fraction.group(2));
                }
            }
            if (value instanceof Number number) {
                requireFinite(number);
            }
            throw new WrongValue(shown(value) + " is not a share", "write a share such as 0.25, \"25 %\" or \"1/4\"");
        });
    }

    static Kind<Double> quantity(Dimension dimension) {
        return new Kind<>(dimension.words(), value -> {
            if (value instanceof String text) {
                return dimension.read(text);
            }
            if (value instanceof Number number) {
                requireFinite(number);
                throw new WrongValue(
                        value + " has no unit",
                        "write it in quotation marks with its unit, such as \"" + dimension.example() + "\"");
            }
            throw new WrongValue(shown(value) + " is not " + dimension.words(), dimension.remedy());
        });
    }

    static Kind<Long> nanos() {
        return quantity(Dimension.TIME).map("a time", seconds -> {
            if (seconds <= LONGEST_SECONDS) {
                return Math.round(seconds * 1e9);
            }
            throw new WrongValue("is longer than 1000 h", Dimension.TIME.remedy());
        });
    }

    /** Returns a size in whole bytes, up to a gigabyte. */
    static Kind<Integer> bytes() {
        return quantity(Dimension.SIZE).map("a size", bytes -> {
            if (bytes == bytes.intValue() && bytes <= 1e9) {
                return bytes.intValue();
            }
            String reason = bytes <= 1e9 ? "is no whole number of bytes" : "is larger than 1000 MB";
            throw new WrongValue(reason, Dimension.SIZE.remedy());
        });
    }

    /** Returns a number of the given dimension that may be uncertain. */
    static Kind<Uncertain> uncertain(Dimension dimension) {
        Kind<Double> number = quantity(dimension);
        return new UncertainReading(number, number, dimension.example()).kind();
    }

    /** Returns a level at the receiver's input in dBm: what its meter shows or dBm themselves; may be uncertain. */
    static Kind<Uncertain> meterOrDbm() {
        Kind<Double> reading = new Kind<>("a meter reading or a level in dBm", value -> {
            String text = String.valueOf(value).strip();
            return text.startsWith("S")
                    ? meterDbm(text)
                    : quantity(Dimension.ABSOLUTE_LEVEL).read(value);
        });
        return new UncertainReading(reading, quantity(Dimension.RATIO), "S7").kind();
    }

    private static double meterDbm(String text) throws WrongValue {
        return MeterReading.parse(text)
                .map(MeterReading::dbm)
                .orElseThrow(() -> new WrongValue(
                        "\"" + text + "\" is no meter reading",
                        "a meter shows S1 to S9, then S9+10 and so on up to S9+99"));
    }

    /** Returns a choice of an enumeration's constants by their names in small letters. */
    static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
        return choice(List.of(type.getEnumConstants()), Kind::wordsOf);
    }

    static <T> Kind<T> choice(Collection<T> values, Function<? super T, String> naming) {
        Map<String, T> byName = new LinkedHashMap<>();
        values.forEach(value -> byName.put(naming.apply(value), value));
        return new Kind<>("one of " + String.join(", ", byName.keySet()), value -> {
            T chosen = byName.get(
                    String.valueOf(value).strip().toLowerCase(Locale.ROOT).replace(' ', '-'));
            if (chosen == null) {
                throw new WrongValue(
                        shown(value) + " is not a valid choice",
                        Spelling.advice(String.valueOf(value), byName.keySet()));
            }
            return chosen;
        });
    }

    static <T> Kind<List<T>> list(Kind<T> element) {
        return new Kind<>("a list, each " + element.words(), value -> {
            if (!(value instanceof List<?> raw) || raw.isEmpty()) {
                throw new WrongValue(shown(value) + " is not a list with an entry", "write a list in square brackets");
            }
            List<T> values = new ArrayList<>();
            for (Object each : raw) {
                values.add(element.read(each));
            }
            return List.copyOf(values);
        });
    }

    /** Turns a value that has been read into another. */
    @FunctionalInterface
    interface Conversion<A, B> {
        /** Returns the value's conversion; throws {@link WrongValue} if there is none. */
        B of(A value) throws WrongValue;
    }

    <R> Kind<R> map(String newWords, Conversion<? super T, R> conversion) {
        return new Kind<>(newWords, value -> conversion.of(read(value)));
    }

    /** Returns a constant's name as people write it: QAM16 is 16-qam, GO_BACK_N is go-back-n. */
    static String wordsOf(Enum<?> constant) {
        return constant.name()
                .replaceAll("^([A-Z]+)(\\d+)", "$2-$1")
                .replace('_', '-')
                .toLowerCase(Locale.ROOT);
    }

    private static void requireFinite(Number number) throws WrongValue {
        if (!Double.isFinite(number.doubleValue())) {
            throw new WrongValue(number + " is not a finite number", "write a finite number");
        }
    }

    /** Returns a value as it stands in the file. */
    static String shown(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(Kind::shown).collect(Collectors.joining(", ", "[", "]"));
        }
        return value instanceof String text ? "\"" + text + "\"" : String.valueOf(value);
    }
}
