package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.rendering.Table;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.statistics.Estimate;
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
        return new ChartPage(
                FILE_NAME,
                first.scenario().title(),
                String.join("\n", sweep.basis(), String.join("\n", sweep.sentences()), NetWords.RANGES),
                sweep.tables(),
                isCurve ? curves(sweep.name(), values, findings) : List.of(),
                origin(provenance));
    }

    private static List<Chart> curves(String name, List<Double> values, List<NetFindings> findings) {
        List<Backlog> backlogs = findings.stream().map(NetFindings::backlog).toList();
        String bands = " Bands hold the true number in 95 of 100 studies.";
        return List.of(
                new Chart(
                        "knee",
                        "What is left behind beyond a net at its limit, over " + name,
                        "By how many more messages wait at the end than half-way, in percent of those written meanwhile, less what a"
                                + " net at its limit would leave behind; only messages that somebody calls for. Where the band is"
                                + " above nothing, messages pile up; where it is below, the net keeps up."
                                + bands,
                        "A curve with its band over " + name + ".",
                        new KneeCurve(
                                name,
                                values,
                                List.of(
                                        line("left behind, %", "m0", backlogs, it -> percent(it.beyondLimit())),
                                        line("at the limit", "m1 d1", backlogs, it -> new Estimate(0, 0, 0)))),
                        Table.NONE),
                new Chart(
                        "waiting",
                        "Messages that wait, over " + name,
                        "All that are neither through nor given up." + bands,
                        "Two curves over " + name + "; the numbers at the end stand in the first table.",
                        new KneeCurve(
                                name,
                                values,
                                List.of(
                                        line("at the end", "m0", backlogs, Backlog::atEnd),
                                        line("half-way", "m1 d1", backlogs, Backlog::atMiddle))),
                        Table.NONE));
    }

    private static KneeCurve.Line line(
            String name, String style, List<Backlog> backlogs, Function<Backlog, Estimate> what) {
        return new KneeCurve.Line(name, style, backlogs.stream().map(what).toList());
    }

    private static Estimate percent(Estimate share) {
        return new Estimate(100 * share.value(), 100 * share.low(), 100 * share.high());
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
