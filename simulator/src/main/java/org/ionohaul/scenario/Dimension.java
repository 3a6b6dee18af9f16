package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
            unit("s", "1").inThousands().or("sec", "secs", "second", "seconds"),
            unit("min", "60").or("mins", "minute", "minutes"),
            unit("h", "3600").or("hr", "hrs", "hour", "hours"),
            unit("ms", "1e-3").inThousands(),
            unit("µs", "1e-6").inThousands(),
            unit("us", "1e-6").inThousands());
    static final Dimension SIZE = of(
            "a size",
            "64 kB",
            false,
            unit("B", "1").inThousands().or("byte", "bytes", "Byte", "Bytes"),
            unit("kB", "1e3").inThousands(),
            unit("MB", "1e6"),
            unit("KiB", "1024").inThousands(),
            unit("MiB", "1048576"));
    static final Dimension RATIO = of("a ratio in dB", "14 dB", true, unit("dB", "1"));
    static final Dimension FREQUENCY = of(
            "a frequency",
            "2.4 kHz",
            true,
            unit("Hz", "1").inThousands(),
            unit("kHz", "1e3").inThousands(),
            unit("MHz", "1e6"),
            unit("mHz", "1e-3"));
    static final Dimension DRIFT = of("a drift", "1 Hz/min", true, unit("Hz/min", "1"));
    static final Dimension SYMBOL_RATE = of("a symbol rate", "120 Bd", false, unit("Bd", "1"), unit("kBd", "1e3"));
    static final Dimension GAIN = of("an antenna gain", "-3 dBi", true, unit("dBi", "1"));
    static final Dimension ABSOLUTE_LEVEL = of("a level in dBm", "-97 dBm", true, unit("dBm", "1"));
    static final Dimension POWER = of(
            "a power",
            "100 W",
            false,
            unit("W", "1").inThousands(),
            unit("kW", "1e3"),
            unit("mW", "1e-3").inThousands());
    static final Dimension DISTANCE = of(
            "a distance",
            "70 km",
            false,
            unit("km", "1e3").inThousands(),
            unit("m", "1").inThousands());
    static final Dimension RATE = of("a number of times an hour", "6 /h", false, unit("/h", "1"), unit("/min", "60"));
    static final Dimension WIDENING =
            of("a widening of belief", "0.4 dB/√s", false, unit("dB/√s", "1"), unit("dB/sqrt(s)", "1"));

    private static final List<Dimension> ALL = List.of(
            TIME, SIZE, RATIO, FREQUENCY, SYMBOL_RATE, GAIN, ABSOLUTE_LEVEL, POWER, DISTANCE, RATE, WIDENING, DRIFT);
    private static final Pattern TERM =
            Pattern.compile("(" + WrittenNumber.PATTERN + ")\\s*([^\\s\\d+\\-−–.,][^\\s\\d]*)?\\s*");

    /** What stands after the hours in "1h30". */
    private static final Pattern MINUTES = Pattern.compile("[0-5]\\d");

    /**
     * A unit.
     *
     * @param symbol how it is written
     * @param factor how many of the dimension's first-named unit it is
     * @param comesInThousands whether people write thousands of it, so that "1.500" of it may be meant so
     * @param otherSymbols other ways of writing it, with the same meaning to everybody
     */
    record Unit(String symbol, BigDecimal factor, boolean comesInThousands, List<String> otherSymbols) {
        private Unit inThousands() {
            return new Unit(symbol, factor, true, otherSymbols);
        }

        private Unit or(String... others) {
            return new Unit(symbol, factor, comesInThousands, List.of(others));
        }

        private boolean isWritten(String text) {
            return symbol.equals(text) || otherSymbols.contains(text);
        }
    }

    private static Unit unit(String symbol, String factor) {
        return new Unit(symbol, new BigDecimal(factor), false, List.of());
    }

    private static Dimension of(String words, String example, boolean mayBeNegative, Unit... units) {
        return new Dimension(words, example, mayBeNegative, List.of(units));
    }

    /**
     * Returns the quantity in the unit whose factor is 1. Several terms, as in "1 h 30 min", add up; "1h30" is short for
     * that. A decimal comma is as good as a point.
     *
     * @throws WrongValue if the text is no such quantity, or may be two of them: "60.000 B"
     */
    double read(String text) throws WrongValue {
        String stripped = WrittenText.plain(text);
        Matcher term = TERM.matcher(stripped);
        BigDecimal sum = BigDecimal.ZERO;
        Optional<Unit> before = Optional.empty();
        int end = 0;
        while (term.find() && term.start() == end) {
            boolean areMinutes = term.end() == stripped.length()
                    && before.filter(it -> it.symbol().equals("h")).isPresent()
                    && MINUTES.matcher(term.group(1)).matches();
            Unit unit = unitOf(
                    text,
                    Optional.ofNullable(term.group(2))
                            .or(() -> Optional.of("min").filter(it -> areMinutes)));
            sum = sum.add(number(text, term.group(1), unit).multiply(unit.factor()));
            before = Optional.of(unit);
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

    private BigDecimal number(String text, String written, Unit unit) throws WrongValue {
        List<BigDecimal> meanings = WrittenNumber.of(written).meanings();
        if (meanings.isEmpty()) {
            throw new WrongValue("\"" + text + "\" is not " + words, remedy());
        }
        if (meanings.size() > 1 && unit.comesInThousands()) {
            String small = plainly(meanings.get(0), unit);
            String large = meanings.get(1).toPlainString() + " " + unit.symbol();
            throw new WrongValue(
                    "\"" + text + "\" can be read in two ways: " + small + " or " + large,
                    "write \"" + small + "\" or \"" + large + "\"");
        }
        return meanings.get(0);
    }

    /** Returns a number with three decimals so that it can be read in one way: with fewer of them or in a smaller unit. */
    private String plainly(BigDecimal number, Unit unit) {
        BigDecimal shortest = number.stripTrailingZeros();
        if (shortest.scale() < 3) {
            return shortest.toPlainString() + " " + unit.symbol();
        }
        return units.stream()
                .filter(smaller -> smaller.factor().movePointRight(3).compareTo(unit.factor()) == 0)
                .findFirst()
                .map(smaller -> number.movePointRight(3).toPlainString() + " " + smaller.symbol())
                .orElseGet(() -> number.setScale(4).toPlainString() + " " + unit.symbol());
    }

    private Unit unitOf(String text, Optional<String> symbol) throws WrongValue {
        if (symbol.isEmpty()) {
            throw new WrongValue("\"" + text + "\" has no unit", remedy());
        }
        Optional<Unit> unit = unit(symbol.get());
        if (unit.isEmpty()) {
            throw new WrongValue(wrongUnit(text, symbol.get()), suggestion(symbol.get()));
        }
        return unit.get();
    }

    private Optional<Unit> unit(String symbol) {
        return units.stream().filter(unit -> unit.isWritten(symbol)).findFirst();
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
