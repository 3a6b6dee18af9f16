package org.ionohaul.picture;

import java.util.ArrayList;
import java.util.List;

/** Labels above a plot, each as near to its place as the picture's edge lets it be, in as many rows as they need. */
public final class LabelRows {
    private static final double GAP = 8;
    /** Room below them, in lines, for half a label of an axis at the plot's upper edge. */
    private static final double BELOW = 0.6;

    private record Label(String style, String words, double centre, double width, int row) {
        boolean meets(Label other) {
            return row == other.row && Math.abs(centre - other.centre) < (width + other.width) / 2 + GAP;
        }
    }

    private final Svg svg;
    private final List<Label> labels = new ArrayList<>();

    /** Begins with no label. */
    public LabelRows(Svg svg) {
        this.svg = svg;
    }

    /** Adds a label about {@code x}, in the lowest row that is free there. */
    public LabelRows add(String style, double x, String words) {
        double width = Lettering.width(words, svg.smallSize());
        Label label = new Label(style, words, svg.centre(x, width), width, 0);
        while (labels.stream().anyMatch(label::meets)) {
            label = new Label(style, words, label.centre, width, label.row + 1);
        }
        labels.add(label);
        return this;
    }

    /** Returns how high the rows are together. */
    public double height() {
        return labels.stream().mapToInt(it -> it.row + 1).max().orElse(0) * svg.lineHeight() + BELOW * svg.lineHeight();
    }

    /** Draws them above a plot whose upper edge is {@code bottom}. */
    public void draw(double bottom) {
        labels.forEach(it ->
                svg.smallTextAbout(it.style, it.centre, bottom - svg.lineHeight() * (it.row + BELOW + 0.15), it.words));
    }
}
