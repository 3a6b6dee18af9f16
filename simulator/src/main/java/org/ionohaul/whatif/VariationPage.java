package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.Chart;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.Provenance;

/** A variation as a page: per case plain sentences, pictures, and a table a mode. */
final class VariationPage {
    private final Variation variation;
    private final VariationWords words;
    private final List<CaseName> cases;
    private final VariationTables tables;

    VariationPage(Variation variation) {
        this.variation = variation;
        this.words = new VariationWords(variation);
        this.cases = CaseName.all(variation.scenario(), words.keys());
        this.tables = new VariationTables(variation, cases);
    }

    WhatIfPage page(Provenance provenance) {
        return WhatIfPage.of(
                variation.scenario(),
                words.basis(),
                words.partial(),
                IntStream.range(0, cases.size()).mapToObj(this::section).toList(),
                provenance);
    }

    private WhatIfSection section(int index) {
        String id = "case-" + (index + 1);
        List<Chart> charts = new ArrayList<>();
        if (variation.sweeps().size() == 1) {
            charts.add(BestStrip.chart(id + "-best", variation, tables, index));
            charts.addAll(new SweepCurves(variation, tables, index).charts(id));
        } else {
            charts.addAll(new SweepMaps(variation, tables, index).charts(id));
        }
        return new WhatIfSection(
                id,
                cases.get(index).what(),
                cases.get(index).route(),
                words.sentences(index),
                WhatIfSection.NO_TABLE,
                charts,
                IntStream.range(0, variation.scenario().modes().size())
                        .mapToObj(mode -> tables.ofMode(index, mode))
                        .toList());
    }
}
