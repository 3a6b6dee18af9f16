package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ionohaul.channel.DayToDay;
import org.ionohaul.channel.DecileDeviations;
import org.ionohaul.channel.MeterReading;
import org.ionohaul.limits.OutOfRange;

/**
 * What may stand after a key, and how it is read.
 *
 * @param words what it is called in a sentence, such as "a time"
 * @param reading turns a value of the file into one of the program
 */
record Kind<T>(String words, Reading<T> reading) {
    private static final String SHARE = "a share";

    /** Compression that fails leaves a little more than there was, never twice as much. */
    private static final double LARGEST_COMPRESSION = 2;

    private static final Pattern FRACTION = Pattern.compile("(\\d+)\\s*(?:/|of|out of)\\s*(\\d+)");
    private static final Pattern PERCENT = Pattern.compile("(.*\\S)\\s*(?:%|percent)");

    private static final Pattern ABOVE_AND_BELOW =
            Pattern.compile("(.*?)\\s*above\\s*(?:[/,;]|and)?\\s*(.*?)\\s*below", Pattern.CASE_INSENSITIVE);
    private static final Pattern METER = Pattern.compile("[Ss]\\s*[+\\-−–\\d]");
    private static final Pattern READING_WITHOUT_S = Pattern.compile("[1-9]|9\\s*\\+\\s*\\d{1,2}(?:\\s*dB)?");
    private static final double LONGEST_SECONDS = 1000 * 3600;

    /** Nothing that a person writes after a key is longer; what is would cost time to take apart. */
    private static final int LONGEST_TEXT = 1000;

    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_LIST = 1000;
    private static final int MOST_SHOWN = 60;

    /** What a spreadsheet takes for the beginning of a formula. */
    private static final String FORMULA_SIGNS = "=+-@\t";

    private static final String ONE_OF = "one of ";
    private static final String CHOICES_APART = ", ";

    /** Turns a value of the file into one of the program. */
    @FunctionalInterface
    interface Reading<T> {
        /** Returns the value; throws {@link WrongValue} if it is not of this kind. */
        T read(Object value) throws WrongValue;
    }

    /** Returns the names of which one must stand there; empty if it is not a choice among names. */
    List<String> choices() {
        return words.startsWith(ONE_OF)
                ? List.of(words.substring(ONE_OF.length()).split(CHOICES_APART))
                : List.of();
    }

    T read(Object value) throws WrongValue {
        if (value instanceof String text && text.length() > LONGEST_TEXT) {
            throw new WrongValue("is longer than " + LONGEST_TEXT + " characters", "");
        }
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

    /** Returns the name of a file, which need not exist. */
    static Kind<String> fileName() {
        return new Kind<>("text", value -> {
            if (value instanceof String text && !text.isBlank()) {
                return text;
            }
            throw new WrongValue(shown(value) + " is not text", "write a few words in quotation marks");
        });
    }

    static Kind<String> text() {
        return fileName().map("text", text -> {
            if (text.codePoints().anyMatch(PlainText::isHidden)) {
                throw new WrongValue(
                        shown(text) + " holds a character that is not shown, such as an end of line",
                        "write a few words in one line, without control characters");
            }
            return text;
        });
    }

    /** Returns a name that may stand in a table: one that no spreadsheet takes for a formula. */
    static Kind<String> name() {
        return text().map("text", name -> {
            if (FORMULA_SIGNS.indexOf(name.charAt(0)) >= 0) {
                throw new WrongValue(
                        shown(name) + " begins with \"" + name.charAt(0) + "\", which spreadsheets take for a formula",
                        "begin a name with another character than = + - @");
            }
            if (name.length() > LONGEST_NAME) {
                throw new WrongValue("is a name of more than " + LONGEST_NAME + " characters", "shorten it");
            }
            return name;
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

    /** Returns a number without a unit, above 0 and up to 1000. */
    static Kind<Double> factor() {
        return new Kind<>("a number", value -> {
            double number = value instanceof Number written
                    ? written.doubleValue()
                    : WrittenNumber.of(WrittenText.plain(String.valueOf(value)))
                            .decimal()
                            .map(BigDecimal::doubleValue)
                            .orElse(0.0);
            if (number > 0 && number <= 1000) {
                return number;
            }
            throw new WrongValue(
                    shown(value) + " is no number above 0 and up to 1000",
                    "write a number such as 1.5, without a unit");
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
            Optional<BigDecimal> written =
                    value instanceof String text ? WrittenNumber.whole(WrittenText.plain(text)) : Optional.empty();
            BigDecimal number = written.orElseThrow(
                    () -> new WrongValue(shown(value) + " is not a whole number", "write a whole number such as 1000"));
            if (number.abs().compareTo(BigDecimal.valueOf(Long.MAX_VALUE)) > 0) {
                throw new WrongValue(
                        shown(value) + " is too large", "write a whole number of at most " + Long.MAX_VALUE);
            }
            return number.longValueExact();
        });
    }

    static Kind<Double> share() {
        return new Kind<>(SHARE, value -> {
            if (value instanceof Number number) {
                requireFinite(number);
                return number.doubleValue();
            }
            return Optional.of(value)
                    .filter(String.class::isInstance)
                    .flatMap(text -> shareIn(WrittenText.plain(String.valueOf(text))))
                    .filter(Double::isFinite)
                    .orElseThrow(() -> new WrongValue(
                            shown(value) + " is not a share", "write a share such as 0.25, \"25 %\" or \"1/4\""));
        });
    }

    /** Returns whether values are shares. */
    boolean isShare() {
        return words.equals(SHARE);
    }

    /** Returns advice for someone whose share was too large: "45 %" for 45; empty if it can't have been a percentage. */
    static String percentMeantBy(Object value) {
        return WrittenNumber.of(String.valueOf(value))
                .decimal()
                .filter(number ->
                        number.compareTo(BigDecimal.ONE) > 0 && number.compareTo(BigDecimal.valueOf(100)) <= 0)
                .map(number -> "did you mean \"" + number.toPlainString() + " %\"?")
                .orElse("");
    }

    /** Returns what compression leaves of a file, of which people tend to say how many times it shrinks. */
    static Kind<Double> compression() {
        Kind<Double> share = share();
        return new Kind<>(SHARE, value -> {
            double left = share.read(value);
            if (left <= LARGEST_COMPRESSION) {
                return left;
            }
            String remedy = left > 10
                    ? percentMeantBy(value)
                    : "write what compression leaves: \"" + Math.round(100 / left) + " %\" if the file shrinks "
                            + shown(value) + " times";
            throw new WrongValue(shown(value) + " would make the file larger, not smaller", remedy);
        });
    }

    private static Optional<Double> shareIn(String text) {
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            double whole = Double.parseDouble(fraction.group(2));
            return whole > 0 ? Optional.of(Double.parseDouble(fraction.group(1)) / whole) : Optional.empty();
        }
        Matcher percent = PERCENT.matcher(text);
        return percent.matches()
                ? WrittenNumber.of(percent.group(1)).decimal().map(it -> it.doubleValue() / 100)
                : WrittenNumber.of(text).decimal().map(BigDecimal::doubleValue);
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

    /**
     * Returns a level at the receiver's input in dBm: what its meter shows or dBm themselves; may be uncertain.
     *
     * @param leastDbm least level that there can be
     * @param mostDbm largest level that there can be
     * @param limits these two, in words
     */
    static Kind<Uncertain> meterOrDbm(double leastDbm, double mostDbm, String limits) {
        Kind<Double> any = meterOrDbmReading();
        Kind<Double> reading = new Kind<>(any.words(), value -> {
            double dbm = any.read(value);
            if (dbm >= leastDbm && dbm <= mostDbm) {
                return dbm;
            }
            throw new WrongValue(shown(value) + " can't be", limits);
        });
        return new UncertainReading(reading, quantity(Dimension.RATIO), "S7").kind();
    }

    /** Returns a ratio of levels by which something is weaker or stronger: a sign would be read as its opposite. */
    static Kind<Double> step() {
        return quantity(Dimension.RATIO).map(Dimension.RATIO.words(), decibels -> {
            if (decibels > 0) {
                return decibels;
            }
            throw new WrongValue(
                    "must be above 0 dB", "write it without a sign, such as \"20 dB\"; leave all of it out for none");
        });
    }

    /** Returns how far a day's level may lie from the usual one: a ratio that may be uncertain, its two deciles, or a name for them. */
    static Kind<Uncertain> dayToDay() {
        Kind<Uncertain> ratio = uncertain(Dimension.RATIO);
        Kind<DayToDay> named = choice(List.of(DayToDay.values()), DayToDay::key);
        return new Kind<>(ratio.words(), value -> {
            String text = value instanceof String written ? WrittenText.plain(written) : "";
            Matcher deciles = ABOVE_AND_BELOW.matcher(text);
            if (deciles.matches()) {
                return deciles(text, deciles.group(1), deciles.group(2));
            }
            boolean isName = !text.isEmpty() && !text.matches(".*\\d.*");
            return isName ? new Uncertain.Deciles(named.read(value).deviations()) : ratio.read(value);
        });
    }

    private static Uncertain deciles(String text, String above, String below) throws WrongValue {
        Kind<Double> ratio = quantity(Dimension.RATIO);
        try {
            return new Uncertain.Deciles(new DecileDeviations(ratio.read(above), ratio.read(below)));
        } catch (OutOfRange e) {
            throw new WrongValue(
                    shown(text) + " tells no deciles",
                    "write both without a sign, from 0 to 100 dB, such as \"6 dB above / 8 dB below\"");
        }
    }

    /** Returns whether a text is meant as a level at the receiver's input, right or wrong. */
    static boolean isLevel(String text) {
        return METER.matcher(text).lookingAt() || text.toLowerCase(Locale.ROOT).contains("dbm");
    }

    static Kind<Double> meterOrDbmReading() {
        return new Kind<>("a meter reading or a level in dBm", value -> {
            String text = WrittenText.plain(String.valueOf(value));
            if (METER.matcher(text).lookingAt()) {
                return meterDbm(text);
            }
            if (READING_WITHOUT_S.matcher(text).matches()) {
                throw new WrongValue(shown(value) + " has no unit", "did you mean \"S" + text + "\"?");
            }
            try {
                return quantity(Dimension.ABSOLUTE_LEVEL).read(value);
            } catch (WrongValue e) {
                throw new WrongValue(
                        e.message(), "write what the meter shows, such as \"S7\", or a level such as \"-97 dBm\"");
            }
        });
    }

    /** Returns an SNR, the difference of two meter readings, of which people are tempted to give one; may be uncertain. */
    static Kind<Uncertain> snr() {
        Kind<Double> number = quantity(Dimension.RATIO);
        Kind<Double> noReading = new Kind<>(number.words(), value -> {
            if (MeterReading.parse(WrittenText.plain(String.valueOf(value))).isPresent()) {
                throw new WrongValue(
                        shown(value) + " is a meter reading, not a ratio in dB",
                        "state signal and noise in place of snr, such as signal = " + shown(value)
                                + " and noise = \"S3\"");
            }
            return number.read(value);
        });
        return new UncertainReading(noReading, number, Dimension.RATIO.example()).kind();
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
        return new Kind<>(ONE_OF + String.join(CHOICES_APART, byName.keySet()), value -> {
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
            if (raw.size() > LONGEST_LIST) {
                throw new WrongValue("has " + raw.size() + " entries", "write at most " + LONGEST_LIST);
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

    /** Returns a value as it stands in the file, cut short if it is long. */
    static String shown(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().limit(MOST_SHOWN).map(Kind::shown).collect(Collectors.joining(", ", "[", "]"));
        }
        String text = PlainText.shortened(String.valueOf(value), MOST_SHOWN);
        return value instanceof String ? "\"" + text + "\"" : text;
    }
}
