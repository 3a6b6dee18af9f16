package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.LikelyTrials;
import org.ionohaul.picture.Picture;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.study.ModeTrials;

/**
 * Fifty dots a mode, each standing for one trial in fifty, over the time at which it is through.
 *
 * @param axis the axis of time
 * @param rows a row a mode
 */
record DotPlot(TimeAxis axis, List<Row> rows) implements Picture {
    /**
     * One mode's trials.
     *
     * @param mode what people call it
     * @param at when those are through that are through within the axis, rising, in its unit
     * @param clock the same in words
     * @param later how many are through later
     * @param never how many never
     */
    record Row(String mode, List<Double> at, List<String> clock, int later, int never) {
        static Row of(ModeTrials mode, TimeScale scale) {
            LikelyTrials likely = LikelyTrials.of(mode);
            List<Double> within = likely.before(scale.endSeconds());
            return new Row(
                    mode.mode().title(),
                    within.stream().map(scale::inUnit).toList(),
                    within.stream().map(TimeText::length).toList(),
                    LikelyTrials.COUNT - likely.never() - within.size(),
                    likely.never());
        }
    }

    static DotPlot of(TimeScale scale, List<Double> deadlinesSeconds, List<ModeTrials> modes) {
        return new DotPlot(
                TimeAxis.of(scale, deadlinesSeconds),
                modes.stream().map(it -> Row.of(it, scale)).toList());
    }

    @Override
    public String svg(int width) {
        return new DotDrawing(this, width).svg();
    }
}
