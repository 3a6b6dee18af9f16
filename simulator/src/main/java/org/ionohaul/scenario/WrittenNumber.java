package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a number may mean that somebody wrote by hand: a comma or a point before the decimals, and spaces, apostrophes,
 * points or commas between thousands. "1.500" may be one and a half or fifteen hundred; nearly everything else has one
 * meaning.
 *
 * @param meanings what it may mean: none if it is no number, otherwise one or two, the smaller first
 */
record WrittenNumber(List<BigDecimal> meanings) {
    /** A number within a longer text; whether its separators make sense is found out by {@link #of}. */
    static final String PATTERN =
            "[+\\-−–]?(?:\\d{1,3}(?:[ '’_]\\d{3})+(?![\\d])(?:[.,]\\d+)?|\\d[\\d_]*(?:[.,]\\d+)*)";

    private static final Pattern WHOLE = Pattern.compile(PATTERN);
    private static final Pattern AMBIGUOUS = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern DECIMAL = Pattern.compile("\\d+(?:[.,]\\d+)?");
    private static final Pattern GROUPED =
            Pattern.compile("\\d{1,3}(?:(?:\\.\\d{3})+(?:,\\d+)?|(?:,\\d{3})+(?:\\.\\d+)?)");
    private static final Pattern THOUSANDS = Pattern.compile("(.*\\d)\\s*[kK]");
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    WrittenNumber {
        meanings = List.copyOf(meanings);
    }

    /** Reads a text that is a number as a whole, with its sign. */
    static WrittenNumber of(String text) {
        String stripped = text.strip();
        if (!WHOLE.matcher(stripped).matches()) {
            return new WrittenNumber(List.of());
        }
        boolean isNegative = "-−–".indexOf(stripped.charAt(0)) >= 0;
        String digits = stripped.replaceAll("[+\\-−–_]", "");
        String joined = digits.replaceAll("[ '’]", "");
        List<BigDecimal> meanings = meanings(joined, !joined.equals(digits));
        return new WrittenNumber(
                isNegative ? meanings.stream().map(BigDecimal::negate).toList() : meanings);
    }

    private static List<BigDecimal> meanings(String digits, boolean hasGroups) {
        List<BigDecimal> meanings = new ArrayList<>();
        if (DECIMAL.matcher(digits).matches()) {
            meanings.add(new BigDecimal(digits.replace(',', '.')));
            if (!hasGroups && AMBIGUOUS.matcher(digits).matches()) {
                meanings.add(new BigDecimal(digits.replaceAll("[.,]", "")));
            }
        } else if (GROUPED.matcher(digits).matches()) {
            int last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
            boolean isDecimalMark = digits.indexOf(digits.charAt(last)) == last;
            String ungrouped = digits.replaceAll("[.,]", "");
            meanings.add(new BigDecimal(ungrouped).movePointLeft(isDecimalMark ? digits.length() - last - 1 : 0));
        }
        return meanings;
    }

    /**
     * Returns the whole number that a text stands for, such as 1000 for {@code 1000}, {@code 1 000}, {@code 1,000} or
     * {@code 1k}; empty if it is none. A count has no decimals, so a comma or point before three digits stands between
     * thousands.
     */
    static Optional<BigDecimal> whole(String text) {
        Matcher thousands = THOUSANDS.matcher(text.strip());
        if (thousands.matches()) {
            return of(thousands.group(1)).only().map(THOUSAND::multiply).filter(WrittenNumber::isWhole);
        }
        List<BigDecimal> meanings = of(text).meanings();
        return meanings.isEmpty()
                ? Optional.empty()
                : Optional.of(meanings.get(meanings.size() - 1)).filter(WrittenNumber::isWhole);
    }

    /** Returns its meaning if there is just one. */
    Optional<BigDecimal> only() {
        return meanings.size() == 1 ? Optional.of(meanings.get(0)) : Optional.empty();
    }

    /** Returns its meaning where thousands make no sense; empty if it is no number. */
    Optional<BigDecimal> decimal() {
        return meanings.stream().findFirst();
    }

    private static boolean isWhole(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0;
    }
}
