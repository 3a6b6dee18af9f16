package org.ionohaul.placing;

import java.util.Comparator;
import java.util.List;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;

/**
 * Ranks of all runs, from the quickest for its kind to the slowest, beside where such ranks usually lie if the model is right.
 *
 * @param placement the runs
 */
record RankLadder(LogPlacement placement) implements Picture {
    private static final double ROW = 20;
    private static final int MOST_MARKS = 6;

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        List<PlacedRun> rising = placement.runs().stream()
                .sorted(Comparator.comparingDouble(it -> it.rank().middle()))
                .toList();
        double left = 60;
        double top = Legend.draw(
                        svg,
                        0,
                        List.of(
                                new Legend.Key(
                                        Legend.Sign.BOX, "open", "where 19 of 20 logs have it if the model is right"),
                                new Legend.Key(Legend.Sign.LINE, "whisker", "the log's; long where it is open")))
                + svg.size() / 2;
        double bottom = top + ROW * rising.size();
        Plot plot = new Plot(
                svg, Scale.linear(0, 100, left, width - svg.size()), Scale.linear(0, rising.size(), top, bottom));
        for (int i = 0; i < rising.size(); i++) {
            draw(plot, rising.get(i), placement.usual().get(i), top + ROW * i);
        }
        plot.axisBelow(plot.across().ticks(MOST_MARKS, Scale::number), "slower than so many of 100 simulated");
        return svg.finished(bottom + Plot.roomBelow(svg));
    }

    private static void draw(Plot plot, PlacedRun run, UsualPlace usual, double y) {
        Svg svg = plot.svg();
        double low = plot.across().at(100 * usual.low());
        double high = plot.across().at(100 * usual.high());
        svg.rectangle("open", low, y + 3, high - low, ROW - 6, "");
        svg.text(
                "",
                Svg.Anchor.START,
                0,
                y + 0.7 * ROW,
                svg.smallSize(),
                "run " + run.run().number());
        double from = plot.across().at(100 * run.rank().low());
        double to = plot.across().at(100 * run.rank().high());
        svg.line("whisker", from, y + ROW / 2, Math.max(to, from + 2), y + ROW / 2);
        svg.line("whisker", (from + to) / 2, y + 4, (from + to) / 2, y + ROW - 4);
    }
}
