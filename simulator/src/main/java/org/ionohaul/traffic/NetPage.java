package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.trial.NetTrial;

/** What a net comes to, as a page of its own. */
public final class NetPage {
    private static final String FILE_NAME = "net.html";

    private NetPage() {}

    /**
     * Returns the page of a net.
     *
     * @param first its first trial, with all that was on the air
     */
    public static ChartPage of(NetFindings findings, NetTrial first, Provenance provenance) {
        NetWords words = new NetWords(findings);
        NetTables tables = new NetTables(findings);
        List<String> reading = new ArrayList<>(List.of(words.basis()));
        reading.addAll(words.sentences());
        reading.add(NetWords.RANGES);
        return new ChartPage(
                FILE_NAME,
                findings.scenario().title(),
                String.join("\n", reading),
                List.of(tables.kinds(), tables.parts()),
                List.of(hour(findings.scenario(), first)),
                origin(provenance));
    }

    private static Chart hour(NetScenario scenario, NetTrial first) {
        return new Chart(
                "hour",
                "Who was on the air and who waited, in the first trial",
                "One trial of many, and not a typical one by choice.",
                "A time line with a row for the gateway and each of " + scenario.stations() + " stations.",
                new NetHour(scenario, first),
                Table.NONE);
    }

    /**
     * Returns the page of a sweep.
     *
     * @param values the values as numbers, rising; empty if they are none
     */
    public static ChartPage of(NetSweep sweep, List<Double> values, Provenance provenance) {
        NetFindings first = sweep.points().get(0).findings();
        List<NetFindings> findings =
                sweep.points().stream().map(NetPoint::findings).toList();
        boolean isCurve = values.size() == findings.size() && values.size() > 1 && isRising(values);
        Optional<Chart> knee = isCurve
                ? Optional.of(new Chart(
                        "knee",
                        "Messages that wait, over " + sweep.key(),
                        "Where the two lines part, waiting grows through the second half of the time. Bands hold the true mean in 95"
                                + " of 100 studies.",
                        "Two curves over " + sweep.key() + "; the numbers stand in the first table.",
                        new KneeCurve(sweep.key(), values, findings),
                        Table.NONE))
                : Optional.empty();
        return new ChartPage(
                FILE_NAME,
                first.scenario().title(),
                sweep.knee().map(it -> it + " ").orElse("") + NetWords.RANGES,
                sweep.tables(),
                knee.stream().toList(),
                origin(provenance));
    }

    private static boolean isRising(List<Double> values) {
        for (int i = 1; i < values.size(); i++) {
            if (values.get(i) <= values.get(i - 1)) {
                return false;
            }
        }
        return true;
    }

    private static String origin(Provenance provenance) {
        return "Made by ionohaul " + provenance.version() + " from "
                + provenance.inputs().stream().map(InputFile::name).collect(Collectors.joining(", ")) + ".";
    }
}
