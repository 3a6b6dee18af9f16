package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.Comparison;
import org.ionohaul.analysis.DataRateShare;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.FileTimes;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.OutcomeShare;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Cells;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Estimate;

/** The tables that sum up one case: what was sent one way, a row a mode. */
final class CaseTables {
    private static final Cell MODE = Cell.of("mode");

    private CaseTables() {}

    /** Returns how surely and how soon each mode delivers: both tables below in one. */
    static Table completion(List<ModeSummary> modes) {
        Table soon = soon(modes);
        Table sure = sure(modes);
        List<List<Cell>> rows = IntStream.range(0, modes.size())
                .mapToObj(i -> joined(soon.rows().get(i), sure.rows().get(i)))
                .toList();
        return new Table(
                "How soon and how surely everything is delivered; in small print, ranges made to hold the true value in"
                        + " about 95 of 100 such studies",
                joined(soon.heads(), sure.heads()),
                rows);
    }

    private static List<Cell> joined(List<Cell> first, List<Cell> second) {
        return Stream.concat(first.stream(), second.stream().skip(1)).toList();
    }

    /** Returns how soon each mode delivers. */
    static Table soon(List<ModeSummary> modes) {
        return soon(
                "How soon everything is delivered",
                modes,
                it -> timesRow(it, it.delivered(), it.tenthSeconds(), it.medianSeconds(), it.ninthSeconds()));
    }

    /** Returns how soon each mode delivers each file, a table a file; none if there is one file only. */
    static List<Table> files(CaseSummary summary) {
        List<PayloadFile> files = summary.transfer().files();
        return IntStream.range(0, files.size() == 1 ? 0 : files.size())
                .mapToObj(i -> soon(
                        "How soon file " + (i + 1) + " of " + files.size() + " is delivered, "
                                + CaseWords.file(files.get(i)),
                        summary.modes(),
                        it -> fileRow(it, it.files().get(i))))
                .toList();
    }

    private static Table soon(String caption, List<ModeSummary> modes, Function<ModeSummary, List<Cell>> row) {
        return new Table(
                caption,
                List.of(
                        MODE,
                        new Cell("delivered", "at all"),
                        new Cell("1 of 10", "through by"),
                        new Cell("5 of 10", "through by"),
                        new Cell("9 of 10", "through by")),
                modes.stream().map(row).toList());
    }

    private static List<Cell> fileRow(ModeSummary mode, FileTimes file) {
        return timesRow(mode, file.delivered(), file.tenthSeconds(), file.medianSeconds(), file.ninthSeconds());
    }

    private static List<Cell> timesRow(
            ModeSummary mode, Estimate delivered, Estimate tenth, Estimate median, Estimate ninth) {
        return List.of(name(mode), Cells.chance(delivered), Cells.time(tenth), Cells.time(median), Cells.time(ninth));
    }

    /** Returns how surely each mode keeps the deadlines, and its pace. */
    static Table sure(List<ModeSummary> modes) {
        Stream<Cell> deadlines = modes.get(0).deadlines().stream()
                .map(it -> new Cell("by " + TimeText.given(it.deadlineSeconds()), "chance"));
        return new Table(
                "How surely the deadlines are kept, and the pace",
                prepended(MODE, Stream.concat(deadlines, Stream.of(new Cell("bytes a minute", "on the air, 5 of 10")))),
                modes.stream().map(CaseTables::sureRow).toList());
    }

    private static List<Cell> sureRow(ModeSummary mode) {
        return prepended(
                name(mode),
                Stream.concat(
                        mode.deadlines().stream().map(DeadlineChance::chance).map(Cells::chance),
                        Stream.of(Cells.pace(mode.medianBytesPerMinute()))));
    }

    /** Returns how sessions ended. */
    static Table outcomes(List<ModeSummary> modes) {
        List<Cell> heads = new ArrayList<>(List.of(MODE));
        List<Outcome> told = OutcomeShare.told(modes);
        told.stream().map(CaseWords::outcome).map(Cell::of).forEach(heads::add);
        return new Table(
                "How sessions ended, in % of trials",
                heads, modes.stream().map(mode -> outcomeRow(mode, told)).toList());
    }

    private static List<Cell> outcomeRow(ModeSummary mode, List<Outcome> told) {
        return prepended(
                name(mode),
                told.stream()
                        .map(it -> Cell.of(OddsText.percent(mode.outcome(it).share()))));
    }

    /** Returns where the time goes, as means over all trials. */
    static Table causes(List<ModeSummary> modes) {
        List<Cell> heads = new ArrayList<>(List.of(MODE));
        Stream.of(Cause.values())
                .map(CauseLegend::of)
                .map(CauseLegend::name)
                .map(Cell::of)
                .forEach(heads::add);
        heads.add(Cell.of("whole session"));
        return new Table(
                "Where the time goes: mean of all trials",
                heads,
                modes.stream().map(CaseTables::causeRow).toList());
    }

    private static List<Cell> causeRow(ModeSummary mode) {
        return prepended(
                name(mode),
                Stream.concat(
                        mode.causes().stream().map(it -> Cell.of(TimeText.length(it.meanSeconds()))),
                        Stream.of(Cell.of(TimeText.length(mode.meanElapsedSeconds())))));
    }

    /** Returns how much each data rate is used; data rates that a mode has not are left blank. */
    static Table dataRates(List<ModeSummary> modes) {
        int most = modes.stream().mapToInt(it -> it.dataRates().size()).max().orElse(0);
        List<Cell> heads = new ArrayList<>(List.of(MODE));
        for (int dataRate = 1; dataRate <= most; dataRate++) {
            heads.add(new Cell("data rate " + dataRate, "frames lost"));
        }
        return new Table(
                "Share of the sending time at each data rate (1 is the most robust); in small print, the share of its"
                        + " frames that were lost",
                heads,
                modes.stream().map(it -> dataRateRow(it, most)).toList());
    }

    private static List<Cell> dataRateRow(ModeSummary mode, int most) {
        List<Cell> row = new ArrayList<>(List.of(name(mode)));
        mode.dataRates().stream().map(CaseTables::dataRate).forEach(row::add);
        while (row.size() <= most) {
            row.add(Cell.of(""));
        }
        return row;
    }

    private static Cell dataRate(DataRateShare dataRate) {
        OptionalDouble lost = dataRate.lostShare();
        return new Cell(
                OddsText.percent(dataRate.airtimeShare()),
                lost.isPresent() ? OddsText.percent(lost.getAsDouble()) : "");
    }

    /** Returns every pair of modes under the same skies. */
    static Table comparisons(CaseSummary summary) {
        Map<String, String> titles = summary.modes().stream()
                .collect(
                        Collectors.toMap(it -> it.mode().name(), it -> it.mode().title()));
        return new Table(
                "Pairs under the same skies: how often the first is through before the second",
                List.of(
                        Cell.of("pair"),
                        new Cell("first sooner", "trials"),
                        new Cell("second sooner", "trials"),
                        new Cell("neither", "gets through"),
                        new Cell("typical lead", "of the first"),
                        new Cell("furthest ahead", "and behind, the first"),
                        new Cell("worth", "if skies were not common")),
                summary.pairs().stream().map(it -> comparisonRow(it, titles)).toList());
    }

    private static List<Cell> comparisonRow(Comparison pair, Map<String, String> titles) {
        return List.of(
                new Cell(
                        titles.getOrDefault(pair.first(), pair.first()),
                        "and " + titles.getOrDefault(pair.second(), pair.second())),
                Cells.chance(pair.firstBeforeShare()),
                Cell.of(OddsText.percent(pair.secondBefore().share())),
                Cell.of(OddsText.percent(pair.neither().share())),
                lead(pair.medianLeadSeconds()),
                new Cell(trial(pair.firstFurthestAhead()), trial(pair.secondFurthestAhead())),
                worth(pair.varianceRatio()));
    }

    private static String trial(OptionalInt trial) {
        return trial.isPresent() ? "trial " + trial.getAsInt() : "on no trial";
    }

    private static Cell worth(double varianceRatio) {
        return varianceRatio > 0
                ? new Cell(String.format(Locale.ROOT, "%.1f trials", 1 / varianceRatio), "")
                : Cell.of("open");
    }

    private static Cell lead(Estimate lead) {
        String low = signedTime(lead.low());
        String high = signedTime(lead.high());
        return new Cell(signedTime(lead.value()), low.equals(high) ? "" : low + " to " + high);
    }

    private static String signedTime(double seconds) {
        if (Double.isInfinite(seconds)) {
            return seconds > 0 ? "only the first" : "only the second";
        }
        return TimeText.signed(seconds);
    }

    private static Cell name(ModeSummary mode) {
        return Cell.of(mode.mode().title());
    }

    private static List<Cell> prepended(Cell first, Stream<Cell> others) {
        return Stream.concat(Stream.of(first), others).toList();
    }
}
