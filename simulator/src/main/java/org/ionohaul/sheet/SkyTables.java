package org.ionohaul.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ionohaul.channel.Deciles;
import org.ionohaul.channel.End;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.DecibelText;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.trial.SkyView;
import org.ionohaul.trial.SteadyNeed;

/** What a sky comes to, end by end and data rate by data rate. */
final class SkyTables {
    private SkyTables() {}

    /** Returns what can be said of each end over the whole time. */
    static Table ends(SkyView view) {
        return new Table(
                "SNR of a full-power carrier in 3 kHz, noise and other stations counted: what half of the time is"
                        + " above, and the worst and the best tenth of the time begin at; a fade is 10 dB below the mean"
                        + " of the moment",
                List.of(
                        Cell.of("at"),
                        new Cell("SNR", "middle"),
                        new Cell("worst", "tenth"),
                        new Cell("best", "tenth"),
                        new Cell("fades", "a minute"),
                        new Cell("faded", "of the time"),
                        new Cell("others", "of the time")),
                Stream.of(End.values()).map(it -> endRow(view, it)).toList());
    }

    private static List<Cell> endRow(SkyView view, End end) {
        WatchSummary summary = view.at(end).summary();
        Deciles sinr = summary.sinrDb();
        return List.of(
                Cell.of(view.scenario().station(end).name()),
                Cell.of(DecibelText.whole(sinr.median())),
                Cell.of(DecibelText.whole(sinr.low())),
                Cell.of(DecibelText.whole(sinr.high())),
                Cell.of(String.format(Locale.ROOT, "%.1f", summary.fadesPerMinute())),
                Cell.of(OddsText.percent(summary.fadedShare())),
                Cell.of(OddsText.percent(summary.occupiedShare())));
    }

    /** Returns what a meter shows at each end whose levels are stated; without rows where none are. */
    static Table meters(SkyView view) {
        return new Table(
                "What the meter of a set shows, and in brackets dBm in 3 kHz (S9 is -73 dBm, an S-unit 6 dB): a full-power"
                        + " carrier of the other station, its middle and where the worst and the best tenth of the time"
                        + " begin; and noise and other stations together",
                List.of(
                        Cell.of("at"),
                        new Cell("signal", "middle"),
                        new Cell("worst", "tenth"),
                        new Cell("best", "tenth"),
                        new Cell("noise", "middle"),
                        new Cell("loudest", "tenth")),
                Stream.of(End.values())
                        .flatMap(end -> view.levels(end).stream().map(it -> meterRow(view, end, it.noiseDbm())))
                        .toList());
    }

    /** Levels over time are counted from the noise floor at the trial's beginning. */
    private static List<Cell> meterRow(SkyView view, End end, double floorDbm) {
        WatchSummary summary = view.at(end).summary();
        return Stream.concat(
                        Stream.of(Cell.of(view.scenario().station(end).name())),
                        DoubleStream.of(
                                        summary.signalDb().median(),
                                        summary.signalDb().low(),
                                        summary.signalDb().high(),
                                        summary.disturbanceDb().median(),
                                        summary.disturbanceDb().high())
                                .mapToObj(db -> Cell.of(LevelText.brief(floorDbm + db))))
                .toList();
    }

    /** Returns what stands over an end's strip, such as {@code At Weir Cottage, hearing Flood desk}. */
    static String heading(SkyView view, End end) {
        return "At " + view.scenario().station(end).name() + ", hearing "
                + view.scenario().station(end.other()).name();
    }

    /** Returns what each data rate needs and how much of the time there is less. */
    static Table needs(SkyView view) {
        return new Table(
                "What each data rate needs on a steady path to lose 1 frame in 10, as SNR of a full-power carrier in 3"
                        + " kHz, and the share of the time in which there is less",
                List.of(
                        Cell.of("mode and data rate"),
                        Cell.of("needs"),
                        new Cell("less at", view.scenario().near().name()),
                        new Cell("less at", view.scenario().far().name())),
                view.scenario().modes().stream()
                        .flatMap(mode -> SteadyNeed.of(mode).stream())
                        .map(need -> needRow(view, need))
                        .toList());
    }

    private static List<Cell> needRow(SkyView view, SteadyNeed need) {
        return List.of(
                Cell.of(need.mode().title() + " " + need.dataRate()),
                Cell.of(DecibelText.need(need.carrierSnrDb())),
                Cell.of(OddsText.percent(need.shareWithLess(view.near()))),
                Cell.of(OddsText.percent(need.shareWithLess(view.far()))));
    }
}
