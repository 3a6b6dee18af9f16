package org.ionohaul.scenario;

import java.util.PrimitiveIterator;

/**
 * Text from files that other people wrote, as it may go to a terminal: what a terminal would obey instead of showing it, or
 * what would show the rest in another order, is written out as {@code \\u001B}.
 */
public final class PlainText {
    private static final String ELLIPSIS = "\u2026";

    private PlainText() {}

    /** Returns the text with everything written out that is not shown as it stands, line ends included. */
    public static String of(String text) {
        if (text.codePoints().noneMatch(PlainText::isHidden)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        for (PrimitiveIterator.OfInt points = text.codePoints().iterator(); points.hasNext(); ) {
            int point = points.nextInt();
            if (isHidden(point)) {
                shown.append(String.format("\\u%04X", point));
            } else {
                shown.appendCodePoint(point);
            }
        }
        return shown.toString();
    }

    /**
     * Returns the text, cut short in its middle if it is longer than that.
     *
     * @param most most characters, 3 or more
     */
    static String shortened(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int half = (most - 1) / 2;
        return text.substring(0, half) + ELLIPSIS + text.substring(text.length() - half);
    }

    /**
     * Returns whether a character is not shown as it stands: a control character other than a tabulator, half of a pair, an end of line, or a sign
     * that turns the direction of writing (Unicode Standard Annex 9, explicit formatting).
     */
    static boolean isHidden(int point) {
        if (point == '\t') {
            return false;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                true;
            case Character.FORMAT -> isDirection(point);
            default -> false;
        };
    }

    private static boolean isDirection(int point) {
        return point == 0x061C
                || point == 0x200E
                || point == 0x200F
                || (point >= 0x202A && point <= 0x202E)
                || (point >= 0x2066 && point <= 0x2069);
    }
}
