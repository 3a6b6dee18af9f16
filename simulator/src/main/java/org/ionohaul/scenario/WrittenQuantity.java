package org.ionohaul.scenario;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, whatever that is.
 *
 * @param number the number
 * @param unit the unit as written; empty if there is none
 */
public record WrittenQuantity(BigDecimal number, String unit) {
    private static final Pattern QUANTITY =
            Pattern.compile("(" + WrittenNumber.PATTERN + ")\\s*([^\\s\\d.,:][^\\s\\d:]*)?");

    /** Returns the quantity that a text is; empty if it is none, or its number has two meanings. */
    public static Optional<WrittenQuantity> of(String text) {
        Matcher parts = QUANTITY.matcher(WrittenText.plain(text));
        return parts.matches()
                ? WrittenNumber.of(parts.group(1))
                        .only()
                        .map(number -> new WrittenQuantity(
                                number, Optional.ofNullable(parts.group(2)).orElse("")))
                : Optional.empty();
    }
}
