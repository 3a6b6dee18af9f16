package org.ionohaul.trace;

import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;

/**
 * A picture under the pen. Numbers are rounded to a tenth of a unit, so that the file stays small and the same on every
 * machine.
 *
 * <p>It scales with the page: sizes are in units of its own view box. It carries a title and a description for people who
 * hear it instead of seeing it.
 */
final class Svg {
    private static final double LETTERING = 13;

    private final StringBuilder out = new StringBuilder();

    /** Which point of a text stands at its position. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * Begins a picture.
     *
     * @param width of the view box
     * @param height of the view box
     * @param title what the picture shows
     * @param description what a reader would see in it
     */
    Svg(double width, double height, String title, String description) {
        write("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ? ?" role="img" aria-labelledby="title about" \
                font-family="system-ui, sans-serif" font-size="?" fill="?">\
                <title id="title">?</title><desc id="about">?</desc>\
                """, width, height, LETTERING, Palette.INK, title, description);
    }

    /** Draws a straight line. */
    void line(double x1, double y1, double x2, double y2, String colour, double width) {
        write("""
                <line x1="?" y1="?" x2="?" y2="?" stroke="?" stroke-width="?"/>\
                """, x1, y1, x2, y2, colour, width);
    }

    /** Draws a line along a path. */
    void stroke(SvgPath path, String colour, double width, String dash) {
        write("""
                <path d="?" fill="none" stroke="?" stroke-width="?" stroke-linejoin="round" stroke-dasharray="?"/>\
                """, path.toString(), colour, width, dash);
    }

    /** Fills a rectangle, with a thin edge of the paper's colour; the text appears when a pointer rests on it. */
    void rectangle(double x, double y, double width, double height, String colour, String hint) {
        write("""
                <rect x="?" y="?" width="?" height="?" fill="?" stroke="?" stroke-width="0.5"><title>?</title></rect>\
                """, x, y, width, height, colour, Palette.PAPER, hint);
    }

    /** Writes a text of ordinary size. */
    void text(double x, double y, Anchor anchor, String colour, String text) {
        text(x, y, anchor, colour, text, "400");
    }

    /** Writes a text in bold. */
    void boldText(double x, double y, Anchor anchor, String colour, String text) {
        text(x, y, anchor, colour, text, "600");
    }

    private void text(double x, double y, Anchor anchor, String colour, String text, String weight) {
        write("""
                <text x="?" y="?" fill="?" font-weight="?" text-anchor="?">?</text>\
                """, x, y, colour, weight, anchor.name().toLowerCase(Locale.ROOT), text);
    }

    /** Ends the picture and returns it as an SVG element. */
    String finished() {
        return out + "</svg>";
    }

    /** Returns a number as pictures write it: at most one decimal. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** Writes an element in which each question mark stands for a value, a number or a text. */
    private void write(String template, Object... values) {
        String[] parts = template.split("\\?", -1);
        out.append(parts[0]);
        for (int i = 0; i < values.length; i++) {
            String text = values[i] instanceof Double number ? number(number) : values[i].toString();
            out.append(StringEscapeUtils.escapeXml10(text)).append(parts[i + 1]);
        }
    }
}
