package org.ionohaul.cli;

import java.util.List;
import java.util.function.BiFunction;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.KeySweep;
import org.ionohaul.whatif.TornadoCsv;
import org.ionohaul.whatif.TornadoText;
import org.ionohaul.whatif.VariationCsv;
import org.ionohaul.whatif.VariationText;
import org.ionohaul.whatif.WhatIfHtml;

/**
 * A question of what would be if: how to tell what came of its runs, the first of which is the reference.
 *
 * @param name how its folder of results ends
 * @param fewestPoints how many runs tell something
 * @param telling tells what came of the reference's scenario and the points that are done
 */
record WhatIf(String name, int fewestPoints, BiFunction<Scenario, List<VariationPoint>, Told> telling) {
    /**
     * What came of it.
     *
     * @param lines for the terminal
     * @param files for the folder of results
     */
    record Told(List<String> lines, List<ResultFolder.Entry> files) {}

    /** Asks what every combination of the keys' values comes to. */
    static WhatIf combined(List<KeySweep> sweeps, Provenance provenance) {
        return new WhatIf("vary", 1, (scenario, points) -> {
            Variation variation = new Variation(scenario, sweeps, points);
            return new Told(
                    new VariationText(variation).lines(),
                    List.of(WhatIfHtml.of(variation, provenance), new VariationCsv(variation)));
        });
    }

    /** Asks which of the keys matters most. */
    static WhatIf eachAlone(List<KeySweep> sweeps, Provenance provenance) {
        return new WhatIf("tornado", 3, (scenario, points) -> {
            Tornado tornado = Tornado.of(scenario, sweeps, points);
            return new Told(
                    new TornadoText(tornado).lines(),
                    List.of(WhatIfHtml.of(tornado, provenance), new TornadoCsv(tornado)));
        });
    }
}
