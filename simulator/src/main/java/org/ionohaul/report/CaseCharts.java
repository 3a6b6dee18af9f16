package org.ionohaul.report;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.CaseSummary;
import org.ionohaul.analysis.CauseTime;
import org.ionohaul.analysis.DataRateShare;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.analysis.OutcomeShare;
import org.ionohaul.picture.Shade;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.Cause;
import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.CaseTrials;

/** The pictures that show one case. */
final class CaseCharts {
    private static final List<StackedBars.Part> CAUSES = Stream.of(Cause.values())
            .map(CauseLegend::of)
            .map(it -> new StackedBars.Part(it.name(), it.style(), false))
            .toList();

    private final String id;
    private final CaseSummary summary;
    private final CaseTrials trials;
    private final TimeScale scale;

    CaseCharts(String id, CaseSummary summary, CaseTrials trials) {
        this.id = id;
        this.summary = summary;
        this.trials = trials;
        this.scale = CaseScale.of(summary);
    }

    /** Returns the pictures in the order in which they are read. */
    List<Chart> all() {
        return List.of(dots(), completion(), causes(), outcomes(), dataRates());
    }

    private Chart dots() {
        return new Chart(
                id + "-dots",
                "Fifty likely trials",
                "Each dot is one trial in fifty: 45 dots left of a deadline are 9 of 10 trials. At the right, rings are"
                        + " through later than the axis reaches, crosses never.",
                "Fifty dots a mode, each one trial in fifty, over the time at which it is through. " + times(),
                DotPlot.of(scale, deadlines(), trials.modes()),
                Table.NONE);
    }

    private Chart completion() {
        return new Chart(
                id + "-completion",
                "Through by when",
                "The higher the line at a given minute, the more trials are through by then; what it lacks to 100 % at the"
                        + " right end comes later or never. The band shows how far chance in the simulation leaves it"
                        + " open.",
                "A rising line a mode: the share of trials that are through over time. " + times(),
                CompletionChart.of(scale, deadlines(), trials.modes()),
                Table.NONE);
    }

    /** What dots and lines show: when half of the trials and 9 of 10 are through, mode by mode. */
    private String times() {
        return each(mode -> "5 of 10 trials " + time(mode.medianSeconds()) + ", 9 of 10 " + time(mode.ninthSeconds()));
    }

    private static String time(Estimate seconds) {
        return Double.isFinite(seconds.value()) ? "after " + TimeText.length(seconds.value()) : "never";
    }

    private String each(Function<ModeSummary, String> finding) {
        return summary.modes().stream()
                .map(it -> it.mode().title() + ": " + finding.apply(it) + ".")
                .collect(Collectors.joining(" "));
    }

    private Chart bars(
            String name,
            String title,
            String reading,
            Function<ModeSummary, String> finding,
            StackedBars bars,
            Table table) {
        return new Chart(id + "-" + name, title, reading, title + ", a bar a mode. " + each(finding), bars, table);
    }

    private Chart outcomes() {
        List<Outcome> told = OutcomeShare.told(summary.modes());
        List<StackedBars.Part> parts = told.stream().map(CaseCharts::part).toList();
        List<StackedBars.Bar> bars = summary.modes().stream()
                .map(mode -> new StackedBars.Bar(
                        mode.mode().title(),
                        "",
                        told.stream().map(it -> mode.outcome(it).share()).toList(),
                        told.stream()
                                .map(it -> OddsText.percent(mode.outcome(it).share()))
                                .toList()))
                .toList();
        return bars(
                "outcomes",
                "How sessions end",
                "Share of trials; those that fail stand apart at the end.",
                mode -> told.stream()
                        .filter(it -> mode.outcome(it).hits() > 0)
                        .map(it -> CaseWords.outcome(it) + " "
                                + OddsText.percent(mode.outcome(it).share()))
                        .collect(Collectors.joining(", ")),
                new StackedBars(parts, bars),
                CaseTables.outcomes(summary.modes()));
    }

    private Chart causes() {
        double longest = summary.modes().stream()
                .mapToDouble(ModeSummary::meanElapsedSeconds)
                .max()
                .orElse(1);
        return bars(
                "causes",
                "Where the time goes",
                "Mean of all trials, also of those that fail. Red is trouble: repeats, silence," + " redialling.",
                mode -> "most for " + most(mode) + ", of " + TimeText.length(mode.meanElapsedSeconds()),
                new StackedBars(
                        CAUSES,
                        summary.modes().stream()
                                .map(it -> causeBar(it, longest))
                                .toList()),
                CaseTables.causes(summary.modes()));
    }

    private static String most(ModeSummary mode) {
        return mode.causes().stream()
                .max(Comparator.comparingDouble(CauseTime::meanSeconds))
                .map(it -> CauseLegend.of(it.cause()).name() + ", " + TimeText.length(it.meanSeconds()))
                .orElseThrow();
    }

    /** All bars are on one scale. */
    private static StackedBars.Bar causeBar(ModeSummary mode, double longest) {
        return new StackedBars.Bar(
                mode.mode().title(),
                TimeText.length(mode.meanElapsedSeconds()),
                mode.causes().stream().map(it -> it.meanSeconds() / longest).toList(),
                mode.causes().stream()
                        .map(it -> TimeText.length(it.meanSeconds()))
                        .toList());
    }

    /** Greys for what is delivered, red for what is not. */
    private static StackedBars.Part part(Outcome outcome) {
        String name = CaseWords.outcome(outcome);
        return switch (outcome) {
            case CLOSED -> new StackedBars.Part(name, Shade.style(0.7), false);
            case CONFIRMED_NOT_CLOSED -> new StackedBars.Part(name, Shade.style(0.4), false);
            case DELIVERED_UNCONFIRMED -> new StackedBars.Part(name, Shade.style(0), false);
            case DELIVERED_WRONG ->
                new StackedBars.Part(name, CauseLegend.of(Cause.REDIALLING).style(), true);
            case GAVE_UP ->
                new StackedBars.Part(
                        name, CauseLegend.of(Cause.REPEATED_PAYLOAD).style(), true);
            case RUNNING ->
                new StackedBars.Part(name, CauseLegend.of(Cause.SILENCE).style(), true);
        };
    }

    private Chart dataRates() {
        int most = summary.modes().stream()
                .mapToInt(it -> it.dataRates().size())
                .max()
                .orElse(1);
        List<StackedBars.Part> parts = IntStream.rangeClosed(1, most)
                .mapToObj(it -> new StackedBars.Part("data rate " + it, Shade.style(it - 1, most), false))
                .toList();
        return bars(
                "data_rates",
                "Data rates used",
                "Share of the sending time at each data rate; 1, the palest, is the slowest and most robust.",
                mode -> mode.dataRates().stream()
                        .max(Comparator.comparingDouble(DataRateShare::airtimeShare))
                        .map(it -> "most at data rate " + it.dataRate() + ", " + OddsText.percent(it.airtimeShare()))
                        .orElse("none"),
                new StackedBars(
                        parts,
                        summary.modes().stream().map(CaseCharts::dataRateBar).toList()),
                CaseTables.dataRates(summary.modes()));
    }

    private static StackedBars.Bar dataRateBar(ModeSummary mode) {
        List<DataRateShare> dataRates = mode.dataRates();
        return new StackedBars.Bar(
                mode.mode().title(),
                dataRates.size() == 1 ? "one data rate" : dataRates.size() + " data rates",
                dataRates.stream().map(DataRateShare::airtimeShare).toList(),
                dataRates.stream().map(it -> Integer.toString(it.dataRate())).toList());
    }

    private List<Double> deadlines() {
        return summary.transfer().deadlinesSeconds();
    }
}
