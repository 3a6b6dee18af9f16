package org.ionohaul.picture;

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
