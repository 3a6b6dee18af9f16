package org.ionohaul.spark;

import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ionohaul.grid.GridQuestion;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.study.PrecisionGoal;

/**
 * What is asked of every row, in a form that travels to other machines: texts in place of files.
 *
 * @param scenario name of the scenario's file
 * @param texts what the files say, by name as seen from the scenario's folder
 * @param changes what is changed in the scenario for all rows, by key
 * @param goal how exact answers must be; none for the scenario's number of trials
 * @param mostTrials where to stop short of the goal, 1 or more
 */
record ShippedQuestion(
        String scenario,
        Map<String, String> texts,
        Map<String, String> changes,
        List<PrecisionGoal> goal,
        int mostTrials)
        implements Serializable {
    /** Copies maps and list. */
    ShippedQuestion {
        texts = Map.copyOf(texts);
        changes = Map.copyOf(changes);
        goal = List.copyOf(goal);
    }

    /**
     * Packs a scenario, what it reads and every mode beside it: rows may name others.
     *
     * @param file the scenario
     * @param changes what is changed in it for all rows, by key
     * @param goal how exact answers must be
     * @param mostTrials where to stop short of the goal
     * @throws ScenarioProblems if it can't be simulated as it stands
     * @throws IOException if a file can't be read
     */
    static ShippedQuestion of(Path file, Map<String, String> changes, Optional<PrecisionGoal> goal, int mostTrials)
            throws ScenarioProblems, IOException {
        Path scenario = ScenarioReader.named(file);
        ScenarioReader.read(SourceFiles.DISK, scenario, changes);
        Map<String, String> texts = new HashMap<>();
        Path modes = scenario.resolveSibling("modes");
        for (String mode : ScenarioReader.modeNames(modes)) {
            String name = mode + ".toml";
            texts.put("modes/" + name, SourceFiles.DISK.text(modes.resolve(name)));
        }
        for (InputFile input :
                ScenarioReader.provenance(SourceFiles.DISK, scenario, changes).inputs()) {
            texts.put(input.name(), input.text());
        }
        return new ShippedQuestion(
                String.valueOf(scenario.getFileName()),
                texts,
                changes,
                goal.stream().toList(),
                mostTrials);
    }

    /** Unpacks it. */
    GridQuestion question() {
        return new GridQuestion(
                SourceFiles.of(texts), Path.of(scenario), changes, goal.stream().findFirst(), mostTrials);
    }
}
