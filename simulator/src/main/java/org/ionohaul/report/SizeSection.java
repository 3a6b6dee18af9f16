package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.Scenario;

/**
 * Files of other sizes in one direction, on the page.
 *
 * @param route which way
 * @param basis what it rests on
 * @param crossings a sentence for each pair of modes that change places
 * @param chart the picture, with its table
 * @param pace entry price and pace of each mode
 */
public record SizeSection(String route, String basis, List<String> crossings, Chart chart, Table pace) {
    static SizeSection of(Scenario scenario, SizeAnswers answers) {
        return new SizeSection(
                SizeTables.route(scenario, answers),
                SizeTables.basis(answers),
                SizeTables.crossings(answers),
                new Chart(
                        "sizes-" + answers.direction(),
                        "Time against file size",
                        "The lower the line at a given size, the sooner such a file is through on 5 of 10 trials; the"
                                + " band reaches from 1 of 10 to 9 of 10. Dotted upright lines: two modes change places;"
                                + " below, how far chance in the simulation leaves open where. Both scales are"
                                + " logarithmic.",
                        "A rising line a mode: the time until a file is through over its size. "
                                + String.join(" ", SizeTables.crossings(answers)),
                        SizeChart.of(answers),
                        SizeTables.times(answers)),
                SizeTables.pace(answers));
    }
}
