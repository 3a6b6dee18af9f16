package org.ionohaul.livepage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ionohaul.rendering.ModeOrder;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;

/**
 * The scenario that a page is about, as its file stood when the page was begun.
 *
 * @param file its file
 * @param text what stood in it
 * @param scenario what that says
 * @param controls what can be changed in it
 * @param palette the colours of its modes, as in its reports, and behind them those of others that can be chosen: unticking one
 *     leaves each its own
 */
record ScenarioOnPage(Path file, String text, Scenario scenario, Controls controls, ModeOrder palette) {
    /**
     * Reads the file.
     *
     * @throws ScenarioProblems if anything in it or its modes is wrong
     * @throws IOException if it has gone since
     */
    static ScenarioOnPage read(Path file) throws ScenarioProblems, IOException {
        Scenario scenario = ScenarioReader.read(file);
        String text = SourceFiles.DISK.text(file);
        Path folder = file.resolveSibling("modes");
        List<String> names = ScenarioReader.modeNames(folder);
        return new ScenarioOnPage(
                file,
                text,
                scenario,
                Controls.of(scenario, new ScenarioText(text, Map.of()), names),
                new ModeOrder(scenario.modes().stream().map(Mode::title).toList())
                        .with(names.stream()
                                .flatMap(it -> title(folder.resolve(it + ".toml")))
                                .toList()));
    }

    /** A mode that is wrong can't be chosen and needs no colour. */
    private static Stream<String> title(Path mode) {
        try {
            return Stream.of(ScenarioReader.readMode(mode).title());
        } catch (ScenarioProblems e) {
            return Stream.empty();
        }
    }

    /**
     * Returns the run of a setting, with no trial done.
     *
     * @throws ScenarioProblems if it can't be simulated
     */
    LiveRun run(Map<String, String> setting) throws ScenarioProblems {
        return new LiveRun(with(setting), palette);
    }

    /** Returns the scenario with a setting's changes. */
    Understood with(Map<String, String> setting) throws ScenarioProblems {
        return ScenarioReader.understand(files(text), file, setting);
    }

    /** Returns where a setting's numbers come from. */
    Provenance provenance(Map<String, String> setting) throws IOException {
        return ScenarioReader.provenance(files(text), file, setting);
    }

    /**
     * Returns a setting as the text of a scenario file, with all remarks of the original.
     *
     * @throws ScenarioProblems if it would be none
     */
    String saved(Map<String, String> setting) throws ScenarioProblems {
        with(setting);
        String changed = new ScenarioText(text, setting).withChanges().toString();
        ScenarioReader.understand(files(changed), file, Map.of());
        return changed;
    }

    private SourceFiles files(String own) {
        return SourceFiles.DISK.with(file, own);
    }

    /** Returns what is sent and which way, in the scenario's order. */
    List<String> cases() {
        return controls.cases();
    }
}
