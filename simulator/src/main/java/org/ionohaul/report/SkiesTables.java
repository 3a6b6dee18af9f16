package org.ionohaul.report;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.analysis.SkyAnswers;
import org.ionohaul.analysis.SkyMeasure;
import org.ionohaul.analysis.SkySpread;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.DecibelText;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Scenario;

/** What is said about the skies of all trials. */
final class SkiesTables {
    private SkiesTables() {}

    /** Returns what the skies were at each end: on the middle one of the trials and, in small print, on eight of ten. */
    static Table ends(Scenario scenario, SkyAnswers skies) {
        return new Table(
                "The skies of " + SizeText.grouped(skies.trials()) + " trials, "
                        + TimeText.given(skies.watchedSeconds())
                        + " each: SNR of a full-power carrier in 3 kHz, noise and other stations counted, on the middle"
                        + " trial and, in small print, on 8 of 10",
                List.of(
                        Cell.of("at"),
                        new Cell("SNR", "half the time above"),
                        new Cell("SNR", "9 tenths of it above"),
                        new Cell("others on the air", "of the time")),
                Stream.of(End.values()).map(it -> row(scenario, skies, it)).toList());
    }

    private static List<Cell> row(Scenario scenario, SkyAnswers skies, End end) {
        List<SkySpread> spreads = end == End.NEAR ? skies.near() : skies.far();
        return Stream.concat(
                        Stream.of(Cell.of(scenario.station(end).name())),
                        spreads.stream().map(SkiesTables::cell))
                .toList();
    }

    private static Cell cell(SkySpread spread) {
        String from = value(spread.measure(), spread.tenth());
        String to = value(spread.measure(), spread.ninth());
        return new Cell(value(spread.measure(), spread.median()), from.equals(to) ? "" : from + " to " + to);
    }

    /** Returns a measure's value with its unit, such as {@code 11 dB} or {@code 20 %}. */
    static String value(SkyMeasure measure, double value) {
        return switch (measure) {
            case MIDDLE_SINR_DB, WORST_TENTH_SINR_DB -> DecibelText.whole(value);
            case OCCUPIED_SHARE -> OddsText.percent(value);
        };
    }
}
