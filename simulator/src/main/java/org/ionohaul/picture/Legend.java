package org.ionohaul.picture;

import java.util.List;

/** What signs of a picture mean, side by side in as many rows as they need. */
public final class Legend {
    private static final double SIGN = 28;
    private static final double GAP = 6;
    private static final double BETWEEN = 22;

    /** How a sign looks. */
    public enum Sign {
        LINE,
        BOX,
        CROSS
    }

    /**
     * What a sign means.
     *
     * @param sign how it looks
     * @param style its style
     * @param words its meaning
     */
    public record Key(Sign sign, String style, String words) {}

    private Legend() {}

    /** Draws a legend and returns where it ends. */
    public static double draw(Svg svg, double top, List<Key> keys) {
        double row = svg.lineHeight() * 1.15;
        double room = svg.width() - SIGN - GAP;
        double x = 0;
        double y = top;
        for (Key key : keys) {
            List<String> lines = Lettering.lines(key.words(), svg.size(), room);
            double wide = lines.stream()
                    .mapToDouble(it -> Lettering.width(it, svg.size()))
                    .max()
                    .orElse(0);
            if (x > 0 && x + SIGN + GAP + wide > svg.width()) {
                x = 0;
                y += row;
            }
            draw(svg, key, x, y + row / 2);
            for (int i = 0; i < lines.size(); i++) {
                svg.text("", x + SIGN + GAP, y + row / 2 + 0.35 * svg.size() + i * svg.lineHeight(), lines.get(i));
            }
            y += (lines.size() - 1) * svg.lineHeight();
            x += SIGN + GAP + wide + BETWEEN;
        }
        return keys.isEmpty() ? top : y + row;
    }

    private static void draw(Svg svg, Key key, double x, double y) {
        String style = "key " + key.style();
        switch (key.sign()) {
            case LINE -> svg.line(style, x, y, x + SIGN, y);
            case BOX -> svg.rectangle(style, x + SIGN / 4, y - SIGN / 4, SIGN / 2, SIGN / 2, "");
            case CROSS -> svg.path(style, Svg.cross(new Path(), x + SIGN / 2, y, 5));
        }
    }
}
