package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a quantity measures, and the units that people write after the number. A number without a unit is refused: a
 * reader of the file could not tell what it means. Units are case-sensitive, as in the SI.
 *
 * @param words what it is called in a sentence, such as "a time"
 * @param example how people write one, such as "20 min"
 * @param mayBeNegative whether a value below zero makes sense
 * @param units its units, most usual first
 */
record Dimension(String words, String example, boolean mayBeNegative, List<Unit> units) {
    static final Dimension TIME = of(
            "a time",
            "20 min",
            false,
            unit("s", "1"),
            unit("min", "60"),
            unit("h", "3600"),
            unit("ms", "1e-3"),
            unit("µs", "1e-6"),
            unit("us", "1e-6"));
    static final Dimension SIZE = of(
            "a size",
            "64 kB",
            false,
            unit("B", "1"),
            unit("kB", "1e3"),
            unit("MB", "1e6"),
            unit("KiB", "1024"),
            unit("MiB", "1048576"));
    static final Dimension RATIO = of("a ratio in dB", "14 dB", true, unit("dB", "1"));
    static final Dimension FREQUENCY = of(
            "a frequency",
            "2.4 kHz",
            true,
            unit("Hz", "1"),
            unit("kHz", "1e3"),
            unit("MHz", "1e6"),
            unit("mHz", "1e-3"));
    static final Dimension SYMBOL_RATE = of("a symbol rate", "120 Bd", false, unit("Bd", "1"), unit("kBd", "1e3"));
    static final Dimension GAIN = of("an antenna gain", "-3 dBi", true, unit("dBi", "1"));
    static final Dimension ABSOLUTE_LEVEL = of("a level in dBm", "-97 dBm", true, unit("dBm", "1"));
    static final Dimension POWER = of("a power", "100 W", false, unit("W", "1"), unit("kW", "1e3"), unit("mW", "1e-3"));
    static final Dimension DISTANCE = of("a distance", "70 km", false, unit("km", "1e3"), unit("m", "1"));
    static final Dimension RATE = of("a number of times an hour", "6 /h", false, unit("/h", "1"), unit("/min", "60"));
    static final Dimension WIDENING =
            of("a widening of belief", "0.4 dB/√s", false, unit("dB/√s", "1"), unit("dB/sqrt(s)", "1"));

    private static final List<Dimension> ALL =
            List.of(TIME, SIZE, RATIO, FREQUENCY, SYMBOL_RATE, GAIN, ABSOLUTE_LEVEL, POWER, DISTANCE, RATE, WIDENING);
    private static final Pattern TERM =
            Pattern.compile("([+\\-−]?\\d+(?:\\.\\d+)?)\\s*([^\\s\\d+\\-−.,][^\\s\\d]*)?\\s*");

    /**
     * A unit.
     *
     * @param symbol how it is written
     * @param factor how many of the dimension's first-named unit it is
     */
    record Unit(String symbol, BigDecimal factor) {}

    private static Unit unit(String symbol, String factor) {
        return new Unit(symbol, new BigDecimal(factor));
    }

    private static Dimension of(String words, String example, boolean mayBeNegative, Unit... units) {
        return new Dimension(words, example, mayBeNegative, List.of(units));
    }

    /**
     * Returns the quantity in the unit whose factor is 1. Several terms, as in "1 h 30 min", add up.
     *
     * @throws WrongValue if the text is no such quantity
     */
    double read(String text) throws WrongValue {
        String stripped = text.strip();
        Matcher term = TERM.matcher(stripped);
        BigDecimal sum = BigDecimal.ZERO;
        int end = 0;
        while (term.find() && term.start() == end) {
            sum = sum.add(new BigDecimal(term.group(1).replace('−', '-')).multiply(factor(text, term.group(2))));
            end = term.end();
        }
        if (end == 0 || end != stripped.length()) {
            throw new WrongValue("\"" + text + "\" is not " + words, remedy());
        }
        if (sum.signum() < 0 && !mayBeNegative) {
            throw new WrongValue("\"" + text + "\" is negative", remedy());
        }
        return sum.doubleValue();
    }

    private BigDecimal factor(String text, @Nullable String symbol) throws WrongValue {
        if (symbol == null) {
            throw new WrongValue("\"" + text + "\" has no unit", remedy());
        }
        Optional<Unit> unit = unit(symbol);
        if (unit.isEmpty()) {
            throw new WrongValue(wrongUnit(text, symbol), suggestion(symbol));
        }
        return unit.get().factor();
    }

    private Optional<Unit> unit(String symbol) {
        return units.stream().filter(unit -> unit.symbol().equals(symbol)).findFirst();
    }

    private String wrongUnit(String text, String symbol) {
        return ALL.stream()
                .filter(other -> other.nearly(symbol).isPresent())
                .findFirst()
                .filter(other -> !equals(other))
                .map(other -> "\"" + text + "\" is " + other.words + ", not " + words)
                .orElseGet(() -> "unit \"" + symbol + "\" in \"" + text + "\" is unknown");
    }

    private String suggestion(String symbol) {
        return nearly(symbol).map(near -> "did you mean \"" + near + "\"?").orElseGet(this::remedy);
    }

    private Optional<String> nearly(String symbol) {
        return symbols().stream().filter(symbol::equalsIgnoreCase).findFirst();
    }

    private List<String> symbols() {
        return units.stream().map(Unit::symbol).toList();
    }

    /** Returns advice on how to write one. */
    String remedy() {
        return "write " + words + " such as \"" + example + "\" (units: " + String.join(", ", symbols()) + ")";
    }
}
