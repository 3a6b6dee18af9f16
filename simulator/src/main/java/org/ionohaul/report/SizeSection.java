package org.ionohaul.report;

import java.util.List;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.SizeAnswers;

/**
 * Files of other sizes in one direction, on the page.
 *
 * @param route which way
 * @param crossings a sentence for each pair of modes that change places
 * @param figure the picture, with its table
 * @param pace entry price and pace of each mode
 */
public record SizeSection(String route, List<String> crossings, Figure figure, Table pace) {
    static SizeSection of(Scenario scenario, SizeAnswers answers) {
        return new SizeSection(
                SizeTables.route(scenario, answers),
                SizeTables.crossings(answers),
                new Figure(
                        "Time against file size",
                        "The lower the line at a given size, the sooner such a file is through on 5 of 10 evenings; the"
                                + " band reaches from 1 of 10 to 9 of 10. Dotted upright lines: two modes change places."
                                + " Both scales are logarithmic.",
                        SizeChart.svg("sizes-" + answers.direction(), answers),
                        SizeTables.times(answers)),
                SizeTables.pace(answers));
    }
}
