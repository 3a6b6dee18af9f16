package org.ionohaul.whatif;

import java.util.List;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;

/**
 * One case on the page of a question what if.
 *
 * @param id a name unique on the page
 * @param heading what is sent
 * @param route which way
 * @param answers sentences that answer the question, the first above all
 * @param best which mode is best where; without rows if the question is another
 * @param charts the pictures
 * @param modes a table a mode
 */
public record WhatIfSection(
        String id,
        String heading,
        String route,
        List<String> answers,
        Table best,
        List<Chart> charts,
        List<Table> modes) {
    static final Table NO_TABLE = new Table("", List.of(), List.of());

    /** Copies the lists. */
    public WhatIfSection {
        answers = List.copyOf(answers);
        charts = List.copyOf(charts);
        modes = List.copyOf(modes);
    }
}
