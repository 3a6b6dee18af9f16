package org.ionohaul.rendering;

import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Svg;

/** What pictures over time have in common: deadlines are upright lines with their names above. */
public final class TimePlots {
    private TimePlots() {}

    /**
     * Returns the labels that stand above a plot.
     *
     * @param name what the upright axis counts; may be empty
     */
    public static LabelRows labels(Svg svg, TimeAxis axis, double left, double right, String name) {
        LabelRows labels = new LabelRows(svg);
        if (!name.isEmpty()) {
            labels.add(Svg.FAINT, 0, name);
        }
        axis.deadlines()
                .forEach(it -> labels.add(Svg.ALERT, axis.scale(left, right).at(it.at()), it.label()));
        if (!axis.beyond().isEmpty()) {
            labels.add(Svg.ALERT, svg.width(), axis.beyondWords());
        }
        return labels;
    }

    /** Draws the deadlines across a plot. */
    public static void deadlines(Plot plot, TimeAxis axis) {
        axis.deadlines().forEach(it -> plot.upright("deadline", it.at()));
    }
}
