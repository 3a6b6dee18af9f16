package org.ionohaul.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Over;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.ModeSeries;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.trial.SkyView;

/**
 * One trial's sky: for each end, the SNR (a line through the middle of each short span, with a band that holds eight tenths
 * of it), what disturbs it, and bars while other stations are on the air.
 *
 * @param view the sky
 */
record SkyChart(SkyView view) {
    private static final int PANEL_PIXELS = 180;
    private static final int TOP = 44;
    private static final int GAP = 88;
    private static final int BAR_PIXELS = 7;
    private static final int SPANS = 220;
    private static final double STEP_DB = 10;
    private static final int SIGNAL = 0;
    private static final int DISTURBANCE = 1;
    private static final int OTHERS = 3;

    /** Returns the height that suits it, in pixels. */
    int heightPixels() {
        return End.values().length * (PANEL_PIXELS + GAP);
    }

    /** Returns what the charting library reads. */
    Json options() {
        TimeAxis axis = new TimeAxis(new TimeScale(view.lengthSeconds()));
        List<Panel> panels = List.of(Panel.of(0, End.NEAR, view, axis), Panel.of(1, End.FAR, view, axis));
        return Json.of(
                """
                {"title": ?, "grid": ?, "xAxis": ?, "yAxis": ?, "series": ?, "tooltip": {"trigger": "axis"}}
                """,
                panels.stream().map(it -> it.title(view)).toList(),
                panels.stream().map(Panel::grid).toList(),
                panels.stream().map(it -> axis.options(it.index())).toList(),
                panels.stream().map(Panel::levels).toList(),
                panels.stream().flatMap(it -> it.series().stream()).toList());
    }

    /** One end's part of the picture. */
    private record Panel(
            int index,
            End end,
            List<Over> overs,
            List<WatchSummary> spans,
            TimeAxis axis,
            double lowDb,
            double highDb) {
        static Panel of(int index, End end, SkyView view, TimeAxis axis) {
            SkyWatch watch = view.at(end);
            List<WatchSummary> spans = watch.spans(Math.min(SPANS, watch.samples()));
            double high = STEP_DB * Math.ceil(values(spans).max().orElse(0) / STEP_DB);
            double low = STEP_DB * Math.floor(values(spans).min().orElse(0) / STEP_DB);
            return new Panel(index, end, watch.overs(), spans, axis, Math.min(high - STEP_DB, low), high);
        }

        private static DoubleStream values(List<WatchSummary> spans) {
            return spans.stream()
                    .flatMapToDouble(it -> DoubleStream.of(
                            it.sinrDb().low(),
                            it.sinrDb().high(),
                            it.disturbanceDb().median()));
        }

        private int top() {
            return TOP + index * (PANEL_PIXELS + GAP);
        }

        Json title(SkyView view) {
            return Json.of(
                    "{\"text\": ?, \"left\": 0, \"top\": ?, \"textStyle\": {\"fontSize\": 13, \"width\": 320, \"overflow\": \"break\"}}",
                    SkyTables.heading(view, end),
                    top() - TOP);
        }

        Json grid() {
            return Json.of("{\"left\": 46, \"right\": 84, \"top\": ?, \"height\": ?}", top(), PANEL_PIXELS);
        }

        Json levels() {
            return Json.of("""
                    {"gridIndex": ?, "type": "value", "min": ?, "max": ?, "axisLabel": {"formatter": "{value} dB"}}
                    """, index, lowDb, highDb);
        }

        List<Json> series() {
            List<Json> middle = spans.stream().map(this::middle).toList();
            List<List<Double>> disturbance = spans.stream()
                    .map(it -> List.of(x(it), it.disturbanceDb().median()))
                    .toList();
            return List.of(
                    others(),
                    band(),
                    new ModeSeries(DISTURBANCE, index).line("disturbed", disturbance, TimeAxis.marks(List.of())),
                    new ModeSeries(SIGNAL, index).line("SNR", middle, TimeAxis.marks(List.of())));
        }

        private Json middle(WatchSummary span) {
            return ModeSeries.datum(
                    List.of(x(span), span.sinrDb().median()),
                    String.format(
                            Locale.ROOT,
                            "%s after pressing send\nSNR %.0f dB, eight tenths of the time %.0f to %.0f dB\n"
                                    + "Disturbed by %.0f dB over the noise floor\nOthers on the air %s of the time",
                            TimeText.clock(seconds(span)),
                            span.sinrDb().median(),
                            span.sinrDb().low(),
                            span.sinrDb().high(),
                            span.disturbanceDb().median(),
                            OddsText.percent(Math.min(1, span.occupiedShare()))));
        }

        private Json band() {
            List<List<Double>> data = spans.stream()
                    .map(it -> List.of(x(it), it.sinrDb().low(), it.sinrDb().high()))
                    .toList();
            return new ModeSeries(SIGNAL, index).shape("band", data);
        }

        private Json others() {
            List<List<Double>> bars = new ArrayList<>();
            double end = axis.scale().endSeconds();
            overs.forEach(it -> bars.add(List.of(
                    axis.at(Math.max(0, SkyView.seconds(it.startNanos()))),
                    axis.at(Math.min(end, SkyView.seconds(it.endNanos()))),
                    highDb,
                    (double) BAR_PIXELS)));
            return new ModeSeries(OTHERS, index).shape("bar", bars);
        }

        private double x(WatchSummary span) {
            return axis.at(seconds(span));
        }

        private static double seconds(WatchSummary span) {
            return (SkyView.seconds(span.fromNanos()) + SkyView.seconds(span.toNanos())) / 2;
        }
    }
}
