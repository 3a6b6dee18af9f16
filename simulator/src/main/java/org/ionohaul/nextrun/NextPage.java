package org.ionohaul.nextrun;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.statistics.Estimate;

/** Which run to make next, as a page. */
public final class NextPage {
    private final NextRun next;
    private final NextText text;

    private NextPage(NextRun next) {
        this.next = next;
        this.text = new NextText(next);
    }

    /** Returns the page. */
    public static ChartPage of(NextRun next, Provenance provenance) {
        return new NextPage(next).page(provenance);
    }

    private ChartPage page(Provenance provenance) {
        boolean isSure = next.verdict() == NextRun.Verdict.SURE_ALREADY;
        List<String> reading = new ArrayList<>(List.of(text.basis(), text.asked()));
        reading.addAll(text.now());
        reading.addAll(text.advice());
        return new ChartPage(
                "next.html",
                next.question().understood().scenario().title(),
                String.join("\n", reading),
                List.of(),
                isSure ? List.of() : List.of(perMinute(), inTime()),
                (isSure ? "" : NextText.READING + " ") + "Made by ionohaul " + provenance.version() + " with seed "
                        + next.question().understood().scenario().seed()
                        + ". The same version, files, seed and numbers give the same page, whatever the number of threads.");
    }

    private Chart perMinute() {
        return new Chart(
                "per-minute",
                "Fewer wrong choices for each minute on the air",
                "The most useful candidate per minute comes first; a whisker holds the true worth in about 95 of 100 such"
                        + " computations. *: no other is better per minute beyond chance.",
                "What candidates are worth per minute; the table has the numbers.",
                new WorthChart(
                        worths().map(it -> bar(it, it.mayBeBest() ? " *" : "", it.fewerWrongPerMinute()))
                                .toList(),
                        "fewer wrong of 100, a minute"),
                text.table());
    }

    private Chart inTime() {
        String limit = TimeText.given(next.question().limitSeconds());
        return new Chart(
                "in-time",
                "Fewer wrong choices with all that fits into " + limit,
                "Each candidate again and again, as often as " + limit + " on the air allows, a meter once.",
                "What candidates are worth in " + limit + ".",
                new WorthChart(
                        worths().map(it -> bar(
                                        it, it.times() == 1 ? "" : " " + it.times() + " times", it.fewerWrongInTime()))
                                .toList(),
                        "fewer wrong of 100"),
                Table.NONE);
    }

    private Stream<Worth> worths() {
        return next.found().orElseThrow().worths().stream();
    }

    private WorthChart.Bar bar(Worth worth, String mark, Estimate chance) {
        return new WorthChart.Bar(
                text.name(worth.candidate()) + mark + ": " + NextText.points(chance) + " (" + NextText.range(chance)
                        + ")",
                new Estimate(100 * chance.value(), 100 * chance.low(), 100 * chance.high()));
    }
}
