package org.ionohaul.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.ionohaul.picture.LabelPlaces;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.picture.Tone;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.trial.ModeCard;

/**
 * A mode's frame loss against SNR on one path: a line a data rate. The losses go by decades, so that one frame in a hundred
 * can be told from one in ten.
 *
 * @param leastPercent the least loss that is shown, in %
 * @param dataRates a line a data rate, the most robust first
 */
record LossChart(double leastPercent, List<Line> dataRates) implements Picture {
    private static final double HEIGHT = 230;
    private static final List<Double> PERCENTS = List.of(0.01, 0.1, 1.0, 10.0, 100.0);

    private static final double LEAST_PERCENT = 0.1;

    /**
     * A line.
     *
     * @param snrDb SNR of the signal in 3 kHz
     * @param loss share of frames lost, in %
     * @param says the same in words
     * @param halfLostDb the SNR at which half of the frames are lost
     * @param tenthLostDb the SNR at which a tenth is lost
     * @param hundredthLostDb the SNR at which a hundredth is lost
     */
    record Line(
            List<Double> snrDb,
            List<Double> loss,
            List<String> says,
            double halfLostDb,
            double tenthLostDb,
            double hundredthLostDb) {
        static Line of(ModeCard.DataRate dataRate, int path) {
            ModeCard.OnPath on = dataRate.paths().get(path);
            long shown = 1
                    + on.curve().stream()
                            .filter(it -> 100 * it.loss() > LEAST_PERCENT)
                            .count();
            List<ModeCard.LossPoint> curve = on.curve().stream().limit(shown).toList();
            return new Line(
                    curve.stream().map(ModeCard.LossPoint::snrDb).toList(),
                    curve.stream()
                            .map(it -> Math.max(LEAST_PERCENT, 100 * it.loss()))
                            .toList(),
                    curve.stream().map(it -> says(dataRate.number(), it)).toList(),
                    on.halfLostDb(),
                    on.tenthLostDb(),
                    on.hundredthLostDb());
        }

        private static String says(int dataRate, ModeCard.LossPoint point) {
            return String.format(
                    Locale.ROOT, "Data rate %d at %.1f dB: %.3g %% lost", dataRate, point.snrDb(), 100 * point.loss());
        }
    }

    private static String tenthLost(ModeCard.OnPath path) {
        return Double.isFinite(path.tenthLostDb())
                ? String.format(Locale.ROOT, "%.1f dB", path.tenthLostDb())
                : "no SNR at all";
    }

    /**
     * Returns the picture.
     *
     * @param card the mode's data sheet
     * @param path index of the path among those of each data rate
     */
    static Chart chart(ModeCard card, int path) {
        String key = card.dataRates().get(0).paths().get(path).path().key();
        return new Chart(
                "loss-" + path,
                "Frames lost, path: " + key,
                "Share of frames lost over the signal's SNR in 3 kHz; a line a data rate with its number beside it, pale for the"
                        + " most robust and dark for the fastest. The numbers are in loss.csv.",
                "Falling lines, one a data rate: the share of frames lost over SNR. A tenth is lost at "
                        + card.dataRates().stream()
                                .map(it -> tenthLost(it.paths().get(path)))
                                .collect(Collectors.joining(", "))
                        + ", data rate 1 first.",
                new LossChart(
                        LEAST_PERCENT,
                        card.dataRates().stream().map(it -> Line.of(it, path)).toList()),
                Table.NONE);
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        List<Tick> percents = PERCENTS.stream()
                .filter(it -> it >= leastPercent)
                .map(it -> new Tick(it, Scale.number(it) + " %"))
                .toList();
        double[] levels = dataRates.stream()
                .flatMap(it -> it.snrDb().stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        double low = DoubleStream.of(levels).min().orElse(0);
        double high = Math.max(low + 1, DoubleStream.of(levels).max().orElse(0));
        Plot plot = new Plot(
                svg,
                Scale.linear(low, high, Plot.roomLeft(svg, percents), width - 2 * svg.size()),
                Scale.logarithmic(leastPercent, 100, svg.size() + HEIGHT, svg.size()));
        plot.axisLeft(percents);
        plot.axisBelow(plot.across().ticks(8, Scale::number), "SNR in 3 kHz, dB");
        for (int i = 0; i < dataRates.size(); i++) {
            Line line = dataRates.get(i);
            plot.line(Tone.style(i, dataRates.size()), points(line));
            for (int k = 0; k < line.snrDb().size(); k++) {
                Point at = plot.at(points(line).get(k));
                svg.circle("point", at.x(), at.y(), 4, line.says().get(k));
            }
        }
        numbers(plot);
        return svg.finished(plot.bottom() + Plot.roomBelow(svg));
    }

    private static List<Point> points(Line line) {
        return IntStream.range(0, line.snrDb().size())
                .mapToObj(k -> new Point(line.snrDb().get(k), line.loss().get(k)))
                .toList();
    }

    /** The data rates' numbers stand in turn where half, a tenth and a hundredth of the frames are lost, where there is room. */
    private void numbers(Plot plot) {
        double[] losses = {50, 10, 1};
        LabelPlaces places = new LabelPlaces(plot.svg());
        for (int i = 0; i < dataRates.size(); i++) {
            Line line = dataRates.get(i);
            double[] levels = {line.halfLostDb(), line.tenthLostDb(), line.hundredthLostDb()};
            for (int k = 0; k < losses.length; k++) {
                int turn = (i + k) % losses.length;
                if (plot.across().holds(levels[turn])
                        && places.put(
                                plot.across().at(levels[turn]) + 3,
                                plot.up().at(losses[turn]),
                                Integer.toString(i + 1))) {
                    break;
                }
            }
        }
    }
}
