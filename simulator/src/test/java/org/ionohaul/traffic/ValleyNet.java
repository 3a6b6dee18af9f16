package org.ionohaul.traffic;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.ionohaul.rendering.ChartPage;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.trial.NetTrials;

/**
 * The shipped net with some keys changed, and what it comes to.
 *
 * @param changes values by key
 * @param trials how many are run
 */
record ValleyNet(Map<String, String> changes, int trials) {
    private static final Path FILE = Path.of("../scenarios/nets/bridge-valley.toml");

    /** Returns the net. */
    NetScenario scenario() throws ScenarioProblems {
        return NetReader.read(SourceFiles.DISK, FILE, changes).scenario();
    }

    /** Returns what its trials come to. */
    NetFindings findings() throws ScenarioProblems {
        NetScenario scenario = scenario();
        NetTrials runs = new NetTrials(scenario);
        return NetFindings.of(
                scenario, LongStream.range(0, trials).mapToObj(runs::run).toList());
    }

    Provenance provenance() throws IOException {
        return NetReader.provenance(SourceFiles.DISK, FILE, changes);
    }

    /** Returns its page. */
    ChartPage page() throws ScenarioProblems, IOException {
        return NetPage.of(findings(), new NetTrials(scenario()).run(0, true), provenance());
    }

    /** Returns what several values of a key come to. */
    List<NetPoint> points(String key, String... values) throws ScenarioProblems {
        List<NetPoint> points = new ArrayList<>();
        for (String value : values) {
            Map<String, String> all = new HashMap<>(changes);
            all.put(key, value);
            points.add(new NetPoint(value, new ValleyNet(all, trials).findings()));
        }
        return points;
    }
}
