package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.Race;
import org.ionohaul.analysis.Race.Lane;
import org.ionohaul.analysis.Race.Mark;
import org.ionohaul.channel.Over;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.picture.Picture;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.trial.SkyView;

/**
 * The race of a case: what the receiver holds over time with each mode, and below it what a meter there shows on the one trial.
 *
 * @param axis the axis of time
 * @param whole what is to be received, in words
 * @param unit in what bytes are counted
 * @param end what is to be received, in that unit
 * @param order the colours of its modes
 * @param modes a line a mode
 * @param heading what the panel below shows
 * @param sky what a meter shows
 */
record RaceChart(
        TimeAxis axis,
        String whole,
        String unit,
        double end,
        ModeOrder order,
        List<Line> modes,
        String heading,
        Meter sky)
        implements Picture {
    /** On a whole screen, to be seen from the last row. */
    static final int WIDE = 1040;

    private static final int SPANS = 160;
    private static final int KILO = 1000;
    private static final int QUARTERS = 4;

    /**
     * One mode.
     *
     * @param mode what people call it
     * @param held bytes held, rising, in the picture's unit
     * @param tenth when 1 of 10 trials hold so many, in the axis's unit; infinite where they never do
     * @param median the same of 5 of 10
     * @param ninth the same of 9 of 10
     * @param says all of this in words
     * @param stops where trials gave up within the axis: when, and bytes held
     * @param one the same of the one trial: a step at each entry, and its end
     * @param isOneDelivered whether it delivered
     */
    record Line(
            String mode,
            List<Double> held,
            List<Double> tenth,
            List<Double> median,
            List<Double> ninth,
            List<String> says,
            List<List<Double>> stops,
            List<List<Double>> one,
            boolean isOneDelivered) {
        static Line of(Lane lane, TimeScale scale, double unit) {
            return new Line(
                    lane.mode().title(),
                    lane.marks().stream().map(it -> it.bytes() / unit).toList(),
                    times(lane, scale, Mark::tenthSeconds),
                    times(lane, scale, Mark::medianSeconds),
                    times(lane, scale, Mark::ninthSeconds),
                    lane.marks().stream().map(Line::says).toList(),
                    lane.stops().stream()
                            .filter(it -> it.seconds() <= scale.endSeconds())
                            .map(it -> List.of(scale.inUnit(it.seconds()), it.bytes() / unit))
                            .toList(),
                    steps(lane, scale, unit),
                    lane.isOneDelivered());
        }

        private static List<Double> times(Lane lane, TimeScale scale, ToDoubleFunction<Mark> which) {
            return lane.marks().stream()
                    .map(it -> scale.inUnit(which.applyAsDouble(it)))
                    .toList();
        }

        private static String says(Mark mark) {
            return amount(mark) + " held after "
                    + Stream.of(mark.tenthSeconds(), mark.medianSeconds(), mark.ninthSeconds())
                            .map(RaceChart::reached)
                            .collect(Collectors.joining(", "))
                    + " on 1, 5, 9 of 10 trials";
        }

        private static List<List<Double>> steps(Lane lane, TimeScale scale, double unit) {
            List<List<Double>> steps = new ArrayList<>(List.of(List.of(0.0, 0.0)));
            double held = 0;
            for (int i = 0; i < lane.one().size(); i++) {
                double seconds = lane.one().atNanos(i) / 1e9;
                if (seconds <= scale.endSeconds()) {
                    held = lane.one().heldBytes(i) / unit;
                    steps.add(List.of(scale.inUnit(seconds), held));
                }
            }
            steps.add(List.of(scale.inUnit(Math.min(lane.oneEndedSeconds(), scale.endSeconds())), held));
            return steps;
        }
    }

    /**
     * What a meter shows.
     *
     * @param at the middle of each short span, in the axis's unit
     * @param low SNR that nine tenths of the span are above, in dB
     * @param median SNR in the middle
     * @param high SNR that one tenth is above
     * @param others from when to when another station is on the air
     */
    record Meter(List<Double> at, List<Double> low, List<Double> median, List<Double> high, List<List<Double>> others) {
        static Meter of(SkyWatch watch, TimeScale scale) {
            double watched = SkyView.seconds(watch.stepNanos()) * watch.samples();
            int spans = (int) Math.min(watch.samples(), Math.max(1, SPANS * watched / scale.endSeconds()));
            List<WatchSummary> shown = watch.spans(spans).stream()
                    .filter(it -> SkyView.seconds(it.toNanos()) <= scale.endSeconds())
                    .toList();
            return new Meter(
                    values(shown, it -> scale.inUnit(SkyView.seconds(it.fromNanos() + it.toNanos()) / 2)),
                    values(shown, it -> it.sinrDb().low()),
                    values(shown, it -> it.sinrDb().median()),
                    values(shown, it -> it.sinrDb().high()),
                    watch.overs().stream()
                            .filter(it -> SkyView.seconds(it.startNanos()) < scale.endSeconds())
                            .map(it -> span(it, scale))
                            .toList());
        }

        private static List<Double> values(List<WatchSummary> spans, ToDoubleFunction<WatchSummary> which) {
            return spans.stream().map(which::applyAsDouble).toList();
        }

        private static List<Double> span(Over over, TimeScale scale) {
            return List.of(
                    scale.inUnit(Math.max(0, SkyView.seconds(over.startNanos()))),
                    scale.inUnit(Math.min(scale.endSeconds(), SkyView.seconds(over.endNanos()))));
        }
    }

    @Override
    public int wide() {
        return WIDE;
    }

    @Override
    public String svg(int width) {
        return new RaceDrawing(this, width).svg();
    }

    /** Returns the picture of a case's race, on the axis that suits it. */
    static Chart chart(String id, Scenario scenario, CaseSummary summary, Race race) {
        return chart(
                id,
                scenario,
                summary,
                race,
                CaseScale.ofRace(summary, race),
                new ModeOrder(race.lanes().stream().map(it -> it.mode().title()).toList()));
    }

    /** Returns the picture of a case's race on an axis and in colours that are given. */
    static Chart chart(String id, Scenario scenario, CaseSummary summary, Race race, TimeScale scale, ModeOrder order) {
        long bytes = race.transfer().totalBytes();
        boolean isKilo = bytes >= 2 * KILO;
        double unit = isKilo ? KILO : 1;
        String receiver = scenario.station(race.direction().receiver()).name();
        return new Chart(
                id,
                "The race: " + race.transfer().name() + " to " + receiver,
                "What the receiver holds over time: thick, 5 of 10 trials; band, from 1 to 9 of 10; thin steps, one trial"
                        + " under one sky, whose signal stands below; crosses, where " + Race.STOPS_OF_TRIALS
                        + " trials gave up if they did.",
                finding(summary, race),
                new RaceChart(
                        TimeAxis.of(scale, race.transfer().deadlinesSeconds()),
                        SizeText.size(bytes),
                        isKilo ? "kB" : "bytes",
                        bytes / unit,
                        order,
                        race.lanes().stream()
                                .map(it -> Line.of(it, scale, unit))
                                .toList(),
                        "SNR at " + receiver + " on trial " + race.trial(),
                        Meter.of(race.sky().at(race.direction().receiver()), scale)),
                table(race));
    }

    private static Table table(Race race) {
        List<Mark> shares = race.lanes().get(0).marks();
        int[] columns = IntStream.rangeClosed(0, QUARTERS)
                .map(quarter -> (int) shares.stream()
                        .filter(it -> it.bytes() * QUARTERS < race.transfer().totalBytes() * quarter)
                        .count())
                .distinct()
                .toArray();
        return new Table(
                "When the receiver holds how much, on 5 of 10 trials; below, from 1 to 9 of 10",
                Stream.concat(Stream.of("mode"), IntStream.of(columns).mapToObj(i -> amount(shares.get(i))))
                        .map(Cell::of)
                        .toList(),
                race.lanes().stream()
                        .map(lane -> Stream.concat(
                                        Stream.of(Cell.of(lane.mode().title())),
                                        IntStream.of(columns)
                                                .mapToObj(i -> cell(lane.marks().get(i))))
                                .toList())
                        .toList());
    }

    private static Cell cell(Mark mark) {
        return new Cell(
                reached(mark.medianSeconds()),
                mark.tenthSeconds() == mark.ninthSeconds()
                        ? ""
                        : reached(mark.tenthSeconds()) + " to " + reached(mark.ninthSeconds()));
    }

    private static String amount(Mark mark) {
        return mark.bytes() == 0 ? "first byte" : SizeText.size(mark.bytes());
    }

    private static String reached(double seconds) {
        return Double.isFinite(seconds) ? TimeText.length(seconds) : "never";
    }

    /** Who has the first byte when, who is through when, and who gives up: what the picture shows at a glance. */
    private static String finding(CaseSummary summary, Race race) {
        return summary.ranking().stream()
                .map(i -> finding(summary.modes().get(i), race.lanes().get(i)))
                .collect(Collectors.joining(" "));
    }

    private static String finding(ModeSummary mode, Lane lane) {
        double first = lane.marks().get(0).medianSeconds();
        double through = mode.medianSeconds().value();
        int stops = lane.stops().size();
        return mode.mode().title() + ": "
                + (Double.isFinite(first) ? "first byte after " + TimeText.length(first) : "mostly no byte")
                + (Double.isFinite(through)
                        ? ", through after " + TimeText.length(through) + " on 5 of 10 trials"
                        : ", not through on 5 of 10 trials")
                + (stops == 0
                        ? "."
                        : "; of the first " + Math.min(mode.trials(), Race.STOPS_OF_TRIALS) + " trials " + stops
                                + " never.");
    }
}
