package org.ionohaul.trace;

import java.util.List;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.Table;

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
        return new ChartPage(
                "story.html",
                story.title(),
                story.ending(),
                List.of(),
                List.of(
                        new Chart(
                                "overview",
                                "The whole session",
                                "What the receiver holds over time, what both ends hear, when each station was on the air, and what the time went to.",
                                story.ending(),
                                new SessionOverview(story),
                                Table.NONE),
                        new Chart(
                                "sequence",
                                "Burst by burst",
                                "Time runs down; an arrow goes from when a burst began to when it had arrived, and ends in a"
                                        + " cross if it was not understood; of an over, how many frames were decoded. At the left what the receiver holds."
                                        + (folded == 0
                                                ? ""
                                                : " Grey: " + folded
                                                        + " overs at the data rate of those before and after, folded and out of scale."),
                                "Every burst of " + story.result().oversSent() + " overs between "
                                        + story.scenario().near().name() + " and "
                                        + story.scenario().far().name() + "; the same stands in words in story.txt.",
                                new SequenceDiagram(story),
                                Table.NONE)),
                "Made by ionohaul " + version + " with seed " + story.scenario().seed() + ", trial " + story.trial()
                        + ". The same version, files, seed and trial give the same page.");
    }
}
