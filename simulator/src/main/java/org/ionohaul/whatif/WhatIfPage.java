package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.report.MethodItem;
import org.ionohaul.report.StudyWords;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;

/**
 * The page of a question what if, as the template wants it.
 *
 * @param title the scenario's title
 * @param basis what the numbers rest on
 * @param partial the warning on an interrupted run; empty if it was not
 * @param cases a section a case
 * @param caution what must be said
 * @param limits what the model leaves out
 * @param method how the numbers were made
 * @param inputs the files that went in
 * @param changes what was taken instead of what the files say, an entry a key
 * @param origin what made the page
 */
public record WhatIfPage(
        String title,
        String basis,
        String partial,
        List<WhatIfSection> cases,
        String caution,
        List<String> limits,
        List<MethodItem> method,
        List<InputFile> inputs,
        List<String> changes,
        String origin) {
    /** Copies the lists. */
    public WhatIfPage {
        cases = List.copyOf(cases);
    }

    static WhatIfPage of(
            Scenario scenario, String basis, String partial, List<WhatIfSection> cases, Provenance provenance) {
        return new WhatIfPage(
                scenario.title(),
                basis,
                partial,
                cases,
                StudyWords.CAUTION,
                StudyWords.LIMITS,
                methodItems(),
                provenance.inputs(),
                provenance.changes().entrySet().stream()
                        .map(it -> it.getKey() + " = " + it.getValue())
                        .toList(),
                "Made by ionohaul " + provenance.version() + " with seed " + scenario.seed() + " and "
                        + scenario.trials() + " trials a value.");
    }

    /** Returns whether the run was interrupted. */
    public boolean isPartial() {
        return !partial.isEmpty();
    }

    private static List<MethodItem> methodItems() {
        return List.of(
                new MethodItem(
                        "The same skies",
                        "Trial number 7 has the same fading, noise and other stations at every value and with every"
                                + " mode (common random numbers), as far as the value itself does not change them. So a"
                                + " small effect shows that would drown among trials drawn anew."),
                new MethodItem("Change", PointWords.CHANGE),
                new MethodItem("Best mode", PointWords.BEST),
                new MethodItem(
                        "Small print",
                        "Ranges are made to hold the true value in about 95 of 100 such studies, as far as chance in"
                                + " the simulation goes (made to hold the true value in about 95 of 100 such studies):"
                                + " distribution-free from order statistics for times and their changes, Wilson's for"
                                + " chances, that of Bonett and Price for changes of chances. With many values some"
                                + " intervals will miss the truth. They say nothing about a scenario that describes the"
                                + " wrong sky."));
    }
}
