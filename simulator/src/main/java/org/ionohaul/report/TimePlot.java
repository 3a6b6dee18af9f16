package org.ionohaul.report;

/**
 * The frame that all pictures over time share: an axis of minutes below, deadlines as upright lines.
 *
 * @param svg the picture
 * @param scale the axis
 * @param left where the axis begins
 * @param top upper edge
 * @param width length of the axis
 * @param height height above the axis
 */
record TimePlot(Svg svg, TimeScale scale, double left, double top, double width, double height) {
    private static final double LABEL_DROP = 16;
    private static final int MOST_MARKS = 9;

    /** Returns where an instant lies; instants beyond the scale lie at its end. */
    double x(double seconds) {
        return left + width * Math.min(1, scale.share(seconds));
    }

    /** Returns where a share of the height lies, 0 on the axis, 1 at the top. */
    double y(double share) {
        return top + height * (1 - share);
    }

    /** Draws the axis with its marks, labels and title. */
    void drawTimeAxis(String title) {
        double floor = y(0);
        svg.line(left, floor, left + width, floor, Palette.FAINT, 1, "none");
        for (double mark : scale.marksSeconds(MOST_MARKS)) {
            svg.line(x(mark), floor, x(mark), floor + 4, Palette.FAINT, 1, "none");
            svg.text(x(mark), floor + LABEL_DROP + 2, Svg.Anchor.MIDDLE, Palette.FAINT, scale.label(mark));
        }
        svg.text(left + width / 2, floor + 2 * LABEL_DROP + 4, Svg.Anchor.MIDDLE, Palette.FAINT, title);
    }

    /** Draws a deadline. */
    void drawDeadline(double seconds) {
        if (scale.share(seconds) <= 1) {
            svg.line(x(seconds), top - 4, x(seconds), y(0), Palette.ALERT, 1.2, "4 3");
            svg.text(x(seconds), top - 8, Svg.Anchor.MIDDLE, Palette.ALERT, TimeText.given(seconds));
        }
    }
}
