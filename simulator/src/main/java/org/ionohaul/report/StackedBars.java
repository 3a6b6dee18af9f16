package org.ionohaul.report;

import java.util.List;
import java.util.Optional;
import org.ionohaul.rendering.ChartRecord;

/**
 * Lying bars, one a mode, each cut into parts.
 *
 * @param isRanked whether the parts are steps from little to much, told apart by shade and label; else by pattern and legend
 * @param parts the parts
 * @param bars the bars
 */
record StackedBars(boolean isRanked, List<Part> parts, List<Bar> bars) implements ChartRecord {
    /**
     * What a part of a bar means.
     *
     * @param name in words
     * @param colour its colour, where it has one wherever it is shown
     */
    record Part(String name, Optional<String> colour) {}

    /**
     * One bar.
     *
     * @param mode what people call the mode
     * @param remark what to say below the name
     * @param amounts length of each part, as a share of the whole width, in the order of the parts
     * @param labels what each part's amount is in words
     */
    record Bar(String mode, String remark, List<Double> amounts, List<String> labels) {}
}
