package org.ionohaul.placing;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;

/** A log beside the simulation, as a page of its own. */
public final class PlacementPage {
    private PlacementPage() {}

    /** Returns the page. */
    public static ChartPage of(LogPlacement placement, Provenance provenance) {
        PlacementText text = new PlacementText(placement);
        return new ChartPage(
                "place.html",
                placement.scenario().title(),
                text.basis() + " " + String.join(" ", text.verdict()),
                List.of(),
                List.of(runs(placement, text), ranks(placement)),
                PlacementText.READING + " Made by ionohaul " + provenance.version() + " with seed "
                        + placement.scenario().seed() + " from the log "
                        + placement.log().name()
                        + ". The same version, files, seed and trials give the same page, whatever the number of threads.");
    }

    private static Chart runs(LogPlacement placement, PlacementText text) {
        ModeOrder order = new ModeOrder(
                placement.scenario().modes().stream().map(Mode::title).toList());
        return new Chart(
                "runs",
                "Each run among simulated ones of its kind",
                "Twenty dots a run: what the simulation makes of it, from quick to slow; those at the right never deliver. The"
                        + " upright line is the run as logged, grey what rounding leaves open; an arrow points to where it may lie if"
                        + " it was broken off, or only seen to have delivered.",
                String.join(" ", text.runSentences()),
                new RunDots(placement, order),
                text.table());
    }

    private static Chart ranks(LogPlacement placement) {
        long outside = outside(placement);
        String finding = outside == 0
                ? "All ranks lie where they usually do if the model is right."
                : outside + " of " + placement.runs().size()
                        + " ranks lie outside of where they do in 19 of 20 logs if the model is right.";
        return new Chart(
                "ranks",
                "All runs together: " + finding,
                "Runs from the quickest for its kind to the slowest. To the right of the grey: slower than the model says. Each"
                        + " rank by itself leaves its grey in 1 of 20 logs; the tests above look at all.",
                finding,
                new RankLadder(placement),
                Table.NONE);
    }

    private static long outside(LogPlacement placement) {
        double[] rising = placement.runs().stream()
                .mapToDouble(it -> it.rank().middle())
                .sorted()
                .toArray();
        return IntStream.range(0, rising.length)
                .filter(it -> rising[it] < placement.usual().get(it).low()
                        || rising[it] > placement.usual().get(it).high())
                .count();
    }
}
