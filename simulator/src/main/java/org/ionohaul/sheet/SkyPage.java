package org.ionohaul.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.trial.SkyView;

/** One trial's sky as a page of its own. */
public final class SkyPage {
    private SkyPage() {}

    /**
     * Returns the page.
     *
     * @param view the sky
     * @param version version of the program
     */
    public static ChartPage of(SkyView view, String version) {
        return new ChartPage(
                "sky.html",
                view.scenario().title() + ": the sky of trial " + view.trial(),
                "As a meter at each end would show it.",
                Stream.of(SkyTables.ends(view), SkyTables.meters(view))
                        .filter(table -> !table.rows().isEmpty())
                        .toList(),
                List.of(SkySection.chart(view)),
                "Made by ionohaul " + version + " with seed " + view.scenario().seed() + ", trial " + view.trial()
                        + ". The same version, files, seed and trial give the same sky.");
    }
}
