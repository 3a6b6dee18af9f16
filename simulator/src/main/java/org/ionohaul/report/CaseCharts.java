package org.ionohaul.report;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ionohaul.session.Cause;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.CaseSummary;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.LevelShare;
import org.ionohaul.study.ModeSummary;
import org.ionohaul.study.ModeTrials;

/** The pictures that show one case. */
final class CaseCharts {
    private static final double MOST_TIMES_THE_SHORTEST = 5;
    private static final List<StackedBars.Part> CAUSES = List.of(
            part(Cause.DIALLING, "#999999", false),
            part(Cause.INTRODUCTIONS, "#5f5f5f", true),
            part(Cause.PREAMBLES, "#56b4e9", false),
            part(Cause.NEW_PAYLOAD, "#0072b2", true),
            part(Cause.REPEATED_PAYLOAD, "#d55e00", true),
            part(Cause.ACKNOWLEDGEMENTS, "#009e73", true),
            part(Cause.TURNAROUNDS, "#f0e442", false),
            part(Cause.SILENCE, "#cc79a7", false),
            part(Cause.REDIALLING, "#e69f00", false),
            part(Cause.HANGING_UP, "#000000", true));

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

    String dots() {
        return DotPlot.svg(
                id + "-dots", trials.modes().stream().map(CaseCharts::dotRow).toList(), deadlines(), scale);
    }

    private static DotPlot.Row dotRow(ModeTrials mode) {
        OrderedSample completion = OrderedSample.of(mode.completionSeconds());
        List<OptionalDouble> seconds = IntStream.range(0, DotPlot.DOTS)
                .mapToDouble(i -> completion.quantile((i + 0.5) / DotPlot.DOTS))
                .mapToObj(it -> Double.isFinite(it) ? OptionalDouble.of(it) : OptionalDouble.empty())
                .toList();
        return new DotPlot.Row(mode.mode().title(), seconds);
    }

    Chart completion() {
        return new Chart(
                id + "-completion",
                "Through by when",
                "The higher the line at a given minute, the more evenings are through by then. The band shows how far"
                        + " chance in the simulation leaves it open.",
                "A rising line a mode: the share of evenings that are through over the time after pressing send. The table"
                        + " above has the numbers.",
                330,
                new CompletionChart(scale, deadlines()).options(trials.modes()),
                new Table("", List.of(), List.of()));
    }

    String causes() {
        double shortest = summary.modes().stream()
                .mapToDouble(ModeSummary::meanElapsedSeconds)
                .min()
                .orElse(1);
        double longest = summary.modes().stream()
                .mapToDouble(ModeSummary::meanElapsedSeconds)
                .filter(it -> it <= MOST_TIMES_THE_SHORTEST * shortest)
                .max()
                .orElse(1);
        return StackedBars.svg(
                id + "-causes",
                "Where the time goes: mean of all evenings",
                CAUSES,
                summary.modes().stream().map(it -> causeBar(it, longest)).toList());
    }

    /** Returns a mode's bar; one too long to leave the others visible is drawn shorter, and says so. */
    private static StackedBars.Bar causeBar(ModeSummary mode, double longest) {
        double elapsed = mode.meanElapsedSeconds();
        String remark = TimeText.clock(elapsed) + " on average" + (elapsed > longest ? ", not to scale" : "");
        return new StackedBars.Bar(
                mode.mode().title(),
                remark,
                mode.causes().stream()
                        .map(it -> it.meanSeconds() / Math.max(elapsed, longest))
                        .toList(),
                mode.causes().stream()
                        .map(it -> TimeText.clock(it.meanSeconds()))
                        .toList());
    }

    String levels() {
        int most = summary.modes().stream()
                .mapToInt(it -> it.levels().size())
                .max()
                .orElse(1);
        List<StackedBars.Part> parts = IntStream.range(0, most)
                .mapToObj(i -> new StackedBars.Part("level " + (i + 1), Palette.rung(i, most), Palette.isDark(i, most)))
                .toList();
        return StackedBars.svg(
                id + "-levels",
                "Share of the sending time at each speed level",
                parts,
                summary.modes().stream().map(CaseCharts::levelBar).toList());
    }

    private static StackedBars.Bar levelBar(ModeSummary mode) {
        List<LevelShare> levels = mode.levels();
        return new StackedBars.Bar(
                mode.mode().title(),
                levels.size() == 1 ? "one level" : levels.size() + " levels",
                levels.stream().map(LevelShare::airtimeShare).toList(),
                levels.stream().map(it -> Integer.toString(it.level())).toList());
    }

    private List<Double> deadlines() {
        return summary.transfer().deadlinesSeconds();
    }

    private static StackedBars.Part part(Cause cause, String colour, boolean isDark) {
        return new StackedBars.Part(CaseWords.cause(cause), colour, isDark);
    }

    /** Returns the colour of a cause in every picture. */
    static String colour(Cause cause) {
        return CAUSES.stream()
                .filter(part -> part.name().equals(CaseWords.cause(cause)))
                .findFirst()
                .orElseThrow()
                .colour();
    }

    /** Returns whether every cause has its part, in order: the bars' amounts come in the order of the causes. */
    static boolean drawsEveryCause() {
        return CAUSES.stream()
                .map(StackedBars.Part::name)
                .toList()
                .equals(Arrays.stream(Cause.values()).map(CaseWords::cause).toList());
    }
}
