package org.ionohaul.picture;

import java.util.ArrayList;
import java.util.List;

/** Small labels within a plot: each is written only where none stands yet. */
public final class LabelPlaces {
    private static final double GAP = 2;

    private record Box(double left, double right, double middle) {}

    private final Svg svg;
    private final List<Box> taken = new ArrayList<>();

    /** Begins with no label. */
    public LabelPlaces(Svg svg) {
        this.svg = svg;
    }

    /** Writes words to the right of a place, if there is room, and returns whether there was. */
    public boolean put(double x, double y, String words) {
        double size = svg.smallSize();
        Box box = new Box(x, x + Lettering.width(words, size), y);
        boolean isFree = box.right <= svg.width()
                && taken.stream()
                        .noneMatch(it -> box.left < it.right + GAP
                                && it.left < box.right + GAP
                                && Math.abs(box.middle - it.middle) < svg.lineHeight());
        if (isFree) {
            taken.add(box);
            svg.text("halo", Svg.Anchor.START, x, y + 0.35 * size, size, words);
        }
        return isFree;
    }
}
