package org.ionohaul.picture;

import java.util.List;

/** Writes an SVG element, shape by shape, in pixels to the right and down. */
public final class Svg {
    /** Where lettering stands at its place. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** Styles of lettering; see the page's style sheet. */
    public static final String FAINT = "faint";

    public static final String ALERT = "alert";
    public static final String BOLD = "bold";

    /** How much smaller the lettering of axes is. */
    private static final double SMALL = 0.92;

    private static final double LINE = 1.25;
    private static final double USUAL = 13;

    private final StringBuilder body = new StringBuilder();
    private final int width;
    private final double size;

    /**
     * Begins a picture.
     *
     * @param width how wide
     * @param size of its lettering
     */
    public Svg(int width, double size) {
        this.width = width;
        this.size = size;
    }

    /** Begins a picture with lettering of the usual size. */
    public Svg(int width) {
        this(width, USUAL);
    }

    public int width() {
        return width;
    }

    /** Returns the size of lettering. */
    public double size() {
        return size;
    }

    /** Returns the size of lettering at axes. */
    public double smallSize() {
        return SMALL * size;
    }

    /** Returns how far lines of lettering are apart. */
    public double lineHeight() {
        return LINE * size;
    }

    /** Draws a line or a surface. */
    public void path(String style, Path path) {
        path(style, path, "");
    }

    /** Draws a line or a surface that says something when pointed at. */
    public void path(String style, Path path, String says) {
        open("path", style).append(" d=\"").append(path).append('"');
        close("path", says);
    }

    /** Draws a straight line. */
    public void line(String style, double x1, double y1, double x2, double y2) {
        path(style, new Path().from(new Point(x1, y1)).to(new Point(x2, y2)));
    }

    /** Draws a rectangle that says something when pointed at; empty for nothing. */
    public void rectangle(String style, double x, double y, double wide, double high, String says) {
        open("rect", style);
        attribute("x", x);
        attribute("y", y);
        attribute("width", Math.max(0, wide));
        attribute("height", Math.max(0, high));
        close("rect", says);
    }

    /** Draws a circle that says something when pointed at; empty for nothing. */
    public void circle(String style, double x, double y, double radius, String says) {
        open("circle", style);
        attribute("cx", x);
        attribute("cy", y);
        attribute("r", radius);
        close("circle", says);
    }

    /** Draws a lying cross of so much to each side. */
    public static Path cross(Path path, double x, double y, double reach) {
        return path.from(new Point(x - reach, y - reach))
                .to(new Point(x + reach, y + reach))
                .from(new Point(x - reach, y + reach))
                .to(new Point(x + reach, y - reach));
    }

    /** Writes words on a line at {@code y}. */
    public void text(String style, Anchor anchor, double x, double y, double letterSize, String words) {
        if (words.isEmpty()) {
            return;
        }
        open("text", style);
        attribute("x", x);
        attribute("y", y);
        if (letterSize != size) {
            attribute("font-size", letterSize);
        }
        if (anchor != Anchor.START) {
            body.append(anchor == Anchor.MIDDLE ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        }
        body.append('>').append(escaped(words)).append("</text>");
    }

    /** Writes words of the common size from {@code x} on. */
    public void text(String style, double x, double y, String words) {
        text(style, Anchor.START, x, y, size, words);
    }

    /** Writes words in lines no longer than so much, from {@code top} down, and returns where they end. */
    public double paragraph(String style, double x, double top, double longest, String words) {
        double y = top;
        for (String line : words.split("\n", -1)) {
            for (String each : Lettering.lines(line, size, longest)) {
                y += lineHeight();
                text(style, x, y - lineHeight() / 4, each);
            }
        }
        return y;
    }

    /**
     * A rectangle among others of its size.
     *
     * @param style its style; lettering has the same after {@code on}
     * @param place its upper left corner
     * @param says what it says when pointed at
     * @param label what stands in its middle if it fits there
     */
    public record Tile(String style, Point place, String says, String label) {}

    /** Draws rectangles of one size, of which there may be thousands: what they have in common is written once. */
    public void tiles(double wide, double high, List<Tile> tiles) {
        body.append("<g text-anchor=\"middle\" font-size=\"")
                .append(number(smallSize()))
                .append("\">");
        for (Tile tile : tiles) {
            double x = tile.place().x();
            double y = tile.place().y();
            Path outline = new Path()
                    .from(tile.place())
                    .to(new Point(x + wide, y))
                    .to(new Point(x + wide, y + high))
                    .to(new Point(x, y + high))
                    .close();
            path("part " + tile.style(), outline, tile.says());
            if (fitsInside(wide, high, tile.label())) {
                text("on " + tile.style(), Anchor.START, x + wide / 2, middle(y, high), size, tile.label());
            }
        }
        body.append("</g>");
    }

    /** Writes words in the middle of a rectangle if they fit there. */
    public void textInside(String style, double x, double y, double wide, double high, String words) {
        if (fitsInside(wide, high, words)) {
            text(style, Anchor.MIDDLE, x + wide / 2, middle(y, high), smallSize(), words);
        }
    }

    private boolean fitsInside(double wide, double high, String words) {
        return Lettering.width(words, smallSize()) <= wide - 4 && lineHeight() <= high;
    }

    /** Where small words stand that are in the middle of so much height. */
    private double middle(double top, double high) {
        return top + high / 2 + 0.35 * smallSize();
    }

    /** Writes small words about {@code x}, moved as far as needed to stay in the picture. */
    public void smallTextAbout(String style, double x, double y, String words) {
        text(style, Anchor.MIDDLE, centre(x, Lettering.width(words, smallSize())), y, smallSize(), words);
    }

    /** Returns where the middle of something so wide goes that should be about {@code x} and in the picture. */
    double centre(double x, double wide) {
        return Math.max(wide / 2, Math.min(width - wide / 2, x));
    }

    /** Returns the element. */
    public String finished(double height) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"at" + width + "\" viewBox=\"0 0 " + width + " "
                + number(Math.ceil(height)) + "\" font-size=\"" + number(size) + "\">" + body + "</svg>";
    }

    private StringBuilder open(String element, String style) {
        body.append('<').append(element);
        if (!style.isEmpty()) {
            body.append(" class=\"").append(style).append('"');
        }
        return body;
    }

    private void attribute(String name, double value) {
        body.append(' ').append(name).append("=\"").append(number(value)).append('"');
    }

    private void close(String element, String says) {
        if (says.isEmpty()) {
            body.append("/>");
        } else {
            body.append("><title>")
                    .append(escaped(says))
                    .append("</title></")
                    .append(element)
                    .append('>');
        }
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Returns a number in tenths, without what it does not need. */
    static String number(double value) {
        long tenths = Math.round(10 * value);
        return tenths % 10 == 0
                ? Long.toString(tenths / 10)
                : (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "." + Math.abs(tenths) % 10;
    }
}
