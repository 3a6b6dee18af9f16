package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.NetRates;
import org.ionohaul.analysis.SkyAnswers;
import org.ionohaul.analysis.SkySpread;
import org.ionohaul.channel.End;
import org.ionohaul.picture.LabelRows;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Svg;
import org.ionohaul.picture.Tick;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.DecibelText;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;

/**
 * Net rate against SNR: a line a mode through the mean of its trials, which are dots; shaded, what the scenario's own skies
 * come to at each end.
 *
 * @param ranges the shaded ones
 * @param modes a line a mode
 */
record RateChart(List<Range> ranges, List<Line> modes) implements Picture {
    private static final double HEIGHT = 290;
    private static final double MARGIN = 1.3;
    /** A range without a width is drawn so wide, in dB. */
    private static final double LEAST_WIDTH_DB = 0.4;

    private static final double LEAST_BITS_PER_SECOND = 10;
    private static final List<Double> MARKS =
            List.of(10.0, 30.0, 100.0, 300.0, 1_000.0, 3_000.0, 10_000.0, 30_000.0, 100_000.0);

    /**
     * What 8 of 10 skies come to at one end.
     *
     * @param at whose
     * @param lowDb from, in dB
     * @param highDb to
     */
    record Range(String at, double lowDb, double highDb) {
        static Range of(String at, SkySpread spread) {
            return new Range(at, spread.tenth(), spread.ninth());
        }

        String words() {
            String low = Long.toString(Math.round(lowDb));
            String high = Long.toString(Math.round(highDb));
            return "at " + at + ": " + (low.equals(high) ? "" : low + " to ") + high + " dB";
        }
    }

    /**
     * A mode.
     *
     * @param mode what people call it
     * @param bitsPerSecond for each level, the rate of each trial
     * @param mean for each level, their mean
     */
    record Line(String mode, List<List<Double>> bitsPerSecond, List<Double> mean) {
        static Line of(NetRates.OfMode rates) {
            return new Line(
                    rates.mode().title(),
                    rates.points().stream().map(NetRates.Point::bitsPerSecond).toList(),
                    rates.points().stream().map(NetRates.Point::mean).toList());
        }
    }

    /** Returns the picture with its numbers. */
    static Chart chart(Scenario scenario, NetRates rates, SkyAnswers skies) {
        List<Range> ranges = Stream.of(End.values())
                .map(end ->
                        Range.of(scenario.station(end).name(), (end == End.NEAR ? skies.near() : skies.far()).get(0)))
                .toList();
        RateChart picture =
                new RateChart(ranges, rates.modes().stream().map(Line::of).toList());
        return new Chart(
                "net-rates",
                "How fast each mode goes at which SNR",
                "What is received for each second of the first " + TimeText.given(rates.watchedSeconds())
                        + " after pressing send, of a file without end, at a level that stays, the same at both ends, over the"
                        + " scenario's paths, with nobody else on the air. A dot is one trial of " + rates.trials()
                        + " at each level, the line their mean. Shaded: the SNR that half of the time is above, on 8 of 10"
                        + " skies of this scenario, noise and other stations counted. The upright scale is logarithmic; a line begins where something gets"
                        + " through.",
                picture.finding(),
                picture,
                table(rates));
    }

    private static Table table(NetRates rates) {
        return new Table(
                "Net rate in bit/s over SNR of a full-power carrier in 3 kHz; below, the slowest and the fastest of "
                        + rates.trials() + " trials",
                Stream.concat(
                                Stream.of(Cell.of("SNR")),
                                rates.modes().stream()
                                        .map(it -> Cell.of(it.mode().title())))
                        .toList(),
                IntStream.range(0, NetRates.SNR_DB.size())
                        .mapToObj(level -> Stream.concat(
                                        Stream.of(Cell.of(DecibelText.whole(NetRates.SNR_DB.get(level)))),
                                        rates.modes().stream()
                                                .map(it -> cell(it.points().get(level))))
                                .toList())
                        .toList());
    }

    private static Cell cell(NetRates.Point point) {
        String low = SizeText.grouped(point.bitsPerSecond().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0));
        String high = SizeText.grouped(point.bitsPerSecond().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0));
        return new Cell(SizeText.grouped(point.mean()), low.equals(high) ? "" : low + " to " + high);
    }

    /** Which mode is fastest from which level on. */
    private String finding() {
        List<String> parts = new ArrayList<>();
        String last = "";
        for (int level = 0; level < NetRates.SNR_DB.size(); level++) {
            int at = level;
            Line fastest = modes.stream()
                    .reduce((a, b) -> b.mean().get(at) > a.mean().get(at) ? b : a)
                    .orElseThrow();
            if (fastest.mean().get(level) > 0 && !fastest.mode().equals(last)) {
                last = fastest.mode();
                parts.add(last + " from " + DecibelText.whole(NetRates.SNR_DB.get(level)) + " on");
            }
        }
        return parts.isEmpty()
                ? "Nothing gets through at any level."
                : "Rising lines, one a mode. Fastest, by the mean of the trials: " + String.join(", then ", parts)
                        + ". The scenario's skies: "
                        + ranges.stream().map(Range::words).collect(Collectors.joining(", ")) + ".";
    }

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        ModeOrder order = new ModeOrder(modes.stream().map(Line::mode).toList());
        double high = MARGIN
                * modes.stream()
                        .flatMap(it -> it.bitsPerSecond().stream())
                        .flatMap(List::stream)
                        .mapToDouble(Double::doubleValue)
                        .reduce(10 * LEAST_BITS_PER_SECOND, Math::max);
        List<Tick> marks = MARKS.stream()
                .filter(it -> it <= high)
                .map(it -> new Tick(it, SizeText.grouped(it)))
                .toList();
        List<Double> at = NetRates.SNR_DB;
        double left = Plot.roomLeft(svg, marks);
        Scale across = Scale.linear(
                Math.min(
                        at.get(0),
                        ranges.stream().mapToDouble(Range::lowDb).min().orElse(0)),
                Math.max(
                        at.get(at.size() - 1),
                        ranges.stream().mapToDouble(Range::highDb).max().orElse(0)),
                left,
                width - svg.size());
        LabelRows labels = new LabelRows(svg);
        ranges.forEach(it -> labels.add(Svg.FAINT, across.at((it.lowDb() + it.highDb()) / 2), it.words()));
        double top = svg.paragraph(Svg.FAINT, 0, Legend.draw(svg, 0, order.lines()), width, "bit/s received")
                + labels.height();
        Plot plot = new Plot(svg, across, Scale.logarithmic(LEAST_BITS_PER_SECOND, high, top + HEIGHT, top));
        labels.draw(top);
        ranges.forEach(it -> shade(plot, it));
        plot.axisLeft(marks);
        plot.axisBelow(across.marks(10, Scale::number), "SNR of a full-power carrier in 3 kHz, dB");
        modes.forEach(it -> draw(plot, order.style(it.mode()), it));
        plot.columns(at, IntStream.range(0, at.size()).mapToObj(this::says).toList());
        return svg.finished(plot.bottom() + Plot.roomBelow(svg));
    }

    private static void shade(Plot plot, Range range) {
        double middle = (range.lowDb() + range.highDb()) / 2;
        double half = Math.max(LEAST_WIDTH_DB, range.highDb() - range.lowDb()) / 2;
        double from = plot.across().within(middle - half);
        plot.svg()
                .rectangle(
                        "range",
                        from,
                        plot.top(),
                        plot.across().within(middle + half) - from,
                        plot.bottom() - plot.top(),
                        "");
    }

    private static void draw(Plot plot, String style, Line line) {
        List<Point> means = new ArrayList<>();
        for (int level = 0; level < line.mean().size(); level++) {
            double snrDb = NetRates.SNR_DB.get(level);
            double mean = line.mean().get(level);
            means.add(new Point(snrDb, mean < LEAST_BITS_PER_SECOND ? Double.NaN : mean));
            line.bitsPerSecond().get(level).stream()
                    .filter(it -> it >= LEAST_BITS_PER_SECOND)
                    .map(it -> plot.at(new Point(snrDb, it)))
                    .forEach(it -> plot.svg().circle("dot " + style, it.x(), it.y(), 2, ""));
        }
        plot.parts("line " + style, means);
    }

    private String says(int level) {
        return "At " + DecibelText.whole(NetRates.SNR_DB.get(level)) + "\n"
                + modes.stream()
                        .map(it -> String.format(
                                Locale.ROOT,
                                "%s: %,.0f bit/s",
                                it.mode(),
                                it.mean().get(level)))
                        .collect(Collectors.joining("\n"));
    }
}
