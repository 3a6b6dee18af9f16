package org.ionohaul.scenario;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Two values as people write them side by side: {@code 10 dB .. 20 dB}, {@code 10..20 dB}, {@code 10-20 dB},
 * {@code 10 to 20 dB}. A number without a unit takes that of the other.
 *
 * @param low the first, with its unit
 * @param high the second, with its unit
 */
public record WrittenRange(String low, String high) {
    private static final Pattern BETWEEN = Pattern.compile(
            "\\s*(?:\\.\\.\\.?|…)\\s*|(?<=[\\p{L}\\d])(?:\\s+[-–]\\s+|[-–])(?=[\\d+−Ss])|(?<=[\\p{L}\\d])\\s+to\\s+");
    private static final Pattern ABOUT = Pattern.compile("\\s*(?:±|\\+/?-)\\s*(?=\\d)");
    private static final Pattern BARE = Pattern.compile(WrittenNumber.PATTERN);
    private static final Pattern WITH_UNIT = Pattern.compile(WrittenNumber.PATTERN + "(\\s*[^\\s\\d.,][^\\s\\d]*)");

    /** Returns the ends of a range; empty if the text is none. */
    public static Optional<WrittenRange> of(String text) {
        return halves(BETWEEN, text);
    }

    /** Returns a value and its standard deviation, {@code 12 dB ± 3 dB} or {@code 12 ± 3 dB}; empty if the text is none. */
    static Optional<WrittenRange> around(String text) {
        return halves(ABOUT, text);
    }

    private static Optional<WrittenRange> halves(Pattern between, String text) {
        String[] halves = between.split(WrittenText.plain(text), -1);
        return halves.length == 2
                ? Optional.of(new WrittenRange(lent(halves[0], halves[1]), lent(halves[1], halves[0])))
                : Optional.empty();
    }

    private static String lent(String half, String other) {
        Matcher unit = WITH_UNIT.matcher(other);
        return BARE.matcher(half).matches() && unit.matches() ? half + unit.group(1) : half;
    }
}
