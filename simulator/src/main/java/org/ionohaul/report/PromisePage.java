package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.analysis.FilePromises;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.TimeAxis;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;

/** What may be promised, as a page of its own: the sentence first, then the contours of size against deadline. */
public final class PromisePage {
    private static final String FILE_NAME = "promise.html";

    private PromisePage() {}

    /**
     * Returns which sizes may be promised by which deadline.
     *
     * @param result a study of {@link org.ionohaul.study.SizeTransfers}, with at least one trial done
     * @param promises what it comes to, an entry a direction
     * @param provenance where it all comes from
     */
    public static ChartPage ofSizes(StudyResult result, List<SizePromises> promises, Provenance provenance) {
        LimitWords limits = new LimitWords(result.scenario());
        List<String> reading = new ArrayList<>();
        List<Chart> charts = new ArrayList<>();
        for (SizePromises each : promises) {
            String route = route(result.scenario(), each.direction());
            SizePromiseWords words = new SizePromiseWords(each, limits);
            reading.add(route + ": " + words.headline());
            for (int mode = 0; mode < each.modes().size(); mode++) {
                charts.add(contours(result.scenario(), each, words, mode));
            }
        }
        reading.add(
                "In the pictures a file may be promised below a line: on at least so many trials it is through by the"
                        + " deadline. Lines are the safe ends, as far as chance in the simulation goes; the surer, the darker. Upright"
                        + " scales are logarithmic.");
        reading.add(PromiseReport.SAFE_SIZES);
        return page(result, reading, charts, provenance);
    }

    private static Chart contours(Scenario scenario, SizePromises promises, SizePromiseWords words, int mode) {
        SizePromises.OfMode ofMode = promises.modes().get(mode);
        TimeScale scale = new TimeScale(
                Math.min(scenario.horizonSeconds(), SizePromises.LONGEST_DEADLINE_FACTOR * promises.deadlineSeconds()));
        String promised = "Within " + TimeText.given(promises.deadlineSeconds()) + ", on at least "
                + OddsText.odds(promises.confidence()) + " trials: " + words.safe(ofMode.asked());
        String style = new ModeOrder(scenario.modes().stream().map(Mode::title).toList())
                .style(ofMode.mode().title());
        return new Chart(
                "promise-" + promises.direction() + "-" + (mode + 1),
                ofMode.mode().title() + ", " + CaseWords.route(scenario, promises.direction()),
                promised + ".",
                "Steps that rise with the deadline, one for each of "
                        + String.join(
                                ", ",
                                SizePromises.CONTOURS.stream()
                                        .map(OddsText::odds)
                                        .toList())
                        + ". " + promised + ".",
                new PromiseChart(
                        TimeAxis.of(scale, List.of(promises.deadlineSeconds())),
                        style,
                        ofMode.contours().stream()
                                .map(it -> it.stream().map(scale::inUnit).toList())
                                .toList()),
                words.byDeadline(ofMode));
    }

    /**
     * Returns how surely one file is through by when.
     *
     * @param result a study of that one file, with at least one trial done
     * @param promises what it comes to, an entry a direction
     * @param provenance where it all comes from
     */
    public static ChartPage ofFile(StudyResult result, List<FilePromises> promises, Provenance provenance) {
        LimitWords limits = new LimitWords(result.scenario());
        List<String> reading = new ArrayList<>();
        for (FilePromises each : promises) {
            FilePromiseWords words = new FilePromiseWords(each, limits);
            reading.add(
                    route(result.scenario(), each.summary().direction()) + ": " + String.join(" ", words.sentences()));
        }
        reading.add(PromiseReport.SAFE_TIMES);
        List<Chart> charts = IntStream.range(0, promises.size())
                .mapToObj(i -> throughByWhen(result, promises.get(i), i, limits))
                .toList();
        return page(result, reading, charts, provenance);
    }

    private static Chart throughByWhen(StudyResult result, FilePromises promises, int index, LimitWords limits) {
        FilePromiseWords words = new FilePromiseWords(promises, limits);
        return new Chart(
                "through-" + promises.summary().direction(),
                "Through by when, "
                        + CaseWords.route(result.scenario(), promises.summary().direction()),
                "The higher the line at a given minute, the more trials are through by then. The band shows how far chance in"
                        + " the simulation leaves it open; a promise rests on the safe end, which the table has.",
                "A rising line a mode: the share of trials that are through over time. "
                        + String.join(" ", words.sentences()),
                CompletionChart.of(
                        CaseScale.of(promises.summary()),
                        promises.summary().transfer().deadlinesSeconds(),
                        result.cases().get(index).modes()),
                words.times());
    }

    private static ChartPage page(StudyResult result, List<String> reading, List<Chart> charts, Provenance provenance) {
        return new ChartPage(
                FILE_NAME,
                result.scenario().title() + ": what may be promised",
                String.join(
                        "\n",
                        Stream.of(List.of(StudyWords.basis(result)), reading, List.of(StudyWords.CAUTION))
                                .flatMap(List::stream)
                                .toList()),
                List.of(),
                charts,
                StudyWords.origin(result, provenance));
    }

    private static String route(Scenario scenario, Direction direction) {
        return CaseWords.capital(CaseWords.route(scenario, direction));
    }
}
