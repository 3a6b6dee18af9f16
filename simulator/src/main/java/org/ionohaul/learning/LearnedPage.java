package org.ionohaul.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Transfer;

/** What was learned from a log, as a page of its own. */
public final class LearnedPage {
    private final LearnedLog learned;
    private final LearnedText text;

    private LearnedPage(LearnedLog learned) {
        this.learned = learned;
        this.text = new LearnedText(learned);
    }

    /** Returns the page. */
    public static ChartPage of(LearnedLog learned, Provenance provenance) {
        return new LearnedPage(learned).page(provenance);
    }

    private ChartPage page(Provenance provenance) {
        List<Chart> charts = new ArrayList<>();
        for (int i = 0; i < learned.inputs().size(); i++) {
            charts.add(input(i, learned.inputs().get(i)));
        }
        if (learned.isFitted()) {
            for (Transfer transfer : learned.scenario().transfers()) {
                transfer.directions().forEach(it -> charts.add(forecast(transfer, it)));
            }
        }
        return new ChartPage(
                "learn.html",
                learned.scenario().title(),
                text.basis() + " " + String.join(" ", text.verdict()),
                learned.isFitted() ? List.of(text.inputs()) : List.of(),
                charts,
                (learned.isFitted() ? text.reading() + " " : "") + "Made by ionohaul " + provenance.version()
                        + " with seed " + learned.scenario().seed() + " from the log "
                        + learned.log().name()
                        + ". The same version, files, seed and trials give the same page, whatever the number of threads.");
    }

    private Chart input(int number, InputChange input) {
        List<Cell> row = text.input(input);
        String name = row.get(0).line();
        String finding = input.isUntouched()
                ? "as unsure as before"
                : row.get(1).text() + " before, " + row.get(2).text() + " after the log";
        return new Chart(
                "input-" + number,
                name + ": " + finding,
                "How likely each value was thought to be, and is now.",
                name + " was " + row.get(1).line() + " and is " + row.get(2).line() + "; of its width "
                        + row.get(3).line() + " is left.",
                new InputHistogram(input),
                Table.NONE);
    }

    private Chart forecast(Transfer transfer, Direction direction) {
        List<Forecast> forecasts = learned.forecasts().stream()
                .filter(it -> it.transfer().equals(transfer) && it.direction() == direction)
                .toList();
        String finding = forecasts.stream()
                .map(it -> it.mode().title() + " through in half the trials by "
                        + LearnedText.time(it.before().quantile(0.5)) + " before, "
                        + LearnedText.time(it.after().quantile(0.5)) + " after")
                .collect(Collectors.joining("; "));
        return new Chart(
                "forecast-" + transfer.name() + "-" + direction.name().toLowerCase(Locale.ROOT),
                text.title(transfer, direction).replaceFirst(":$", ""),
                "Percent of trials that are through: thin before the log, thick after it. " + finding + ".",
                finding + ".",
                new ForecastCurves(
                        forecasts,
                        new ModeOrder(learned.scenario().modes().stream()
                                .map(Mode::title)
                                .toList()),
                        learned.scenario().horizonSeconds()),
                text.forecast(transfer, direction));
    }
}
