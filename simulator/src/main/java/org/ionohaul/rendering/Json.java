package org.ionohaul.rendering;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A piece of JSON that may stand in a page, such as the options of a chart. Numbers have five figures, so that the same
 * chart is always the same text.
 *
 * @param text the piece
 */
public record Json(String text) {
    private static final MathContext FIGURES = new MathContext(5);

    /**
     * Returns a piece with values filled in.
     *
     * @param template JSON in which each question mark stands for a value
     * @param values one for each question mark, in order: a text, a number (one that is not finite is written as null), a
     *     truth value, a list of values, or another piece
     */
    public static Json of(String template, Object... values) {
        String[] parts = template.strip().split("\\?", -1);
        if (parts.length != values.length + 1) {
            throw new IllegalArgumentException(values.length + " values for " + (parts.length - 1) + ": " + template);
        }
        StringBuilder text = new StringBuilder(parts[0]);
        for (int i = 0; i < values.length; i++) {
            text.append(written(values[i])).append(parts[i + 1]);
        }
        return new Json(text.toString());
    }

    private static String written(Object value) {
        if (value instanceof Json piece) {
            return piece.text;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Json::written).collect(Collectors.joining(",", "[", "]"));
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? rounded(number) : "null";
        }
        return value instanceof String words ? quoted(words) : value.toString();
    }

    private static String rounded(double number) {
        return new BigDecimal(number).round(FIGURES).stripTrailingZeros().toPlainString();
    }

    /** Writes no less-than sign: it could end the element that the piece stands in. */
    private static String quoted(String words) {
        return JsonForm.LINE.writeValueAsString(words).replace("<", "\\u003c");
    }
}
