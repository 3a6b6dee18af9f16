package org.ionohaul.trace;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;

/** The story of one session as a page: all of it at a glance, then arrow by arrow. */
public final class StoryPage {
    private StoryPage() {}

    /**
     * Returns the page.
     *
     * @param version version of the program
     */
    public static ChartPage of(TraceStory story, String version) {
        List<Fold> folds = Fold.of(story.steps());
        int folded = folds.stream().mapToInt(Fold::overs).sum();
        List<Chart> charts = new ArrayList<>();
        charts.add(new Chart(
                "overview",
                "The whole session",
                "What the receiver holds over time, what both ends hear, when each station was on the air, and what the time went to.",
                story.ending(),
                new SessionOverview(story),
                Table.NONE));
        for (SequenceDiagram part : SequenceDiagram.partsOf(story)) {
            boolean isFirst = part.fromNanos() == 0;
            charts.add(new Chart(
                    "sequence-" + charts.size(),
                    "Burst by burst, " + TimeText.length(part.fromNanos() * 1e-9) + " to "
                            + TimeText.length(part.untilNanos() * 1e-9),
                    isFirst ? reading(folded) : "",
                    "Every burst between " + story.scenario().near().name() + " and "
                            + story.scenario().far().name() + " from then to then, of "
                            + story.result().oversSent()
                            + " overs in all; the same stands in words in story.txt.",
                    part,
                    Table.NONE));
        }
        return new ChartPage(
                "story.html",
                story.title(),
                story.ending(),
                List.of(),
                charts,
                "Made by ionohaul " + version + " with seed " + story.scenario().seed() + ", trial " + story.trial()
                        + ". The same version, files, seed and trial give the same page.");
    }

    private static String reading(int folded) {
        return "Time runs down; an arrow goes from when a burst began to when it had arrived, and ends in a"
                + " cross if it was not understood; of an over, how many frames were decoded. At the left what the receiver holds."
                + (folded == 0
                        ? ""
                        : " Grey: " + folded
                                + " overs at the data rate of those before and after, folded and out of scale.");
    }
}
