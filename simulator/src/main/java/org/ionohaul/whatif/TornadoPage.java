package org.ionohaul.whatif;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.Provenance;

/** A tornado as a page: per case plain sentences, bars for the best mode, and a table a mode. */
final class TornadoPage {
    private final Tornado tornado;
    private final TornadoWords words;
    private final List<CaseName> cases;
    private final TornadoTables tables;

    TornadoPage(Tornado tornado) {
        this.tornado = tornado;
        this.words = new TornadoWords(tornado);
        this.cases = CaseName.all(
                tornado.scenario(), tornado.bars().stream().map(TornadoBar::key).toList());
        this.tables = new TornadoTables(tornado);
    }

    WhatIfPage page(Provenance provenance) {
        return WhatIfPage.of(
                tornado.scenario(),
                words.basis(),
                words.partial(),
                IntStream.range(0, cases.size()).mapToObj(this::section).toList(),
                provenance);
    }

    private WhatIfSection section(int index) {
        String id = "case-" + (index + 1);
        int told = tornado.told(index);
        return new WhatIfSection(
                id,
                cases.get(index).what(),
                cases.get(index).route(),
                words.sentences(index),
                tables.best(index, cases.get(index).deadlinesSeconds()),
                new TornadoCharts(tornado, index, told, tables.ofMode(index, told)).charts(id),
                IntStream.range(0, tornado.scenario().modes().size())
                        .filter(mode -> mode != told)
                        .mapToObj(mode -> tables.ofMode(index, mode))
                        .toList());
    }
}
