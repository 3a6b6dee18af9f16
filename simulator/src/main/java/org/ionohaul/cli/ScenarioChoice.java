package org.ionohaul.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.Warning;
import org.ionohaul.sheet.RhythmWarnings;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which scenario, and what to change in it for this once. */
final class ScenarioChoice {
    @Parameters(paramLabel = "FILE", description = "The scenario file; its modes lie in the folder modes beside it.")
    private Path file = Path.of("");

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Takes this value instead of the file's, such as --set near.snr=\"9 dB\"; may be repeated.",
            converter = Setting.Converter.class)
    private List<Setting> settings = new ArrayList<>();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    private final Set<Warning> told = new HashSet<>();

    /** Returns the scenario with the changes made. */
    Scenario read() throws ScenarioProblems {
        return read(Map.of());
    }

    /** Returns the scenario with the changes made, and these besides. */
    Scenario read(Map<String, String> more) throws ScenarioProblems {
        return read(more, Set.of());
    }

    /** Returns the scenario with the changes made but for some keys, and these besides. */
    Scenario read(Map<String, String> more, Set<String> without) throws ScenarioProblems {
        return understand(more, without).scenario();
    }

    /** Returns the scenario with the changes made and these besides, and what came with it; tells what is odd, once. */
    Understood understand(Map<String, String> more) throws ScenarioProblems {
        return understand(more, Set.of());
    }

    private Understood understand(Map<String, String> more, Set<String> without) throws ScenarioProblems {
        Map<String, String> all = new LinkedHashMap<>(changes());
        all.keySet().removeAll(without);
        all.putAll(more);
        Understood understood = ScenarioReader.understand(SourceFiles.DISK, file(), all);
        WarningList.print(
                Stream.concat(understood.warnings().stream(), RhythmWarnings.of(understood).stream())
                        .filter(told::add)
                        .toList(),
                spec.commandLine().getErr());
        return understood;
    }

    /** Returns what the command line says instead of the scenario file, by key. */
    Map<String, String> changes() {
        Map<String, String> changes = new LinkedHashMap<>();
        settings.forEach(it -> changes.put(it.key(), it.value()));
        return Collections.unmodifiableMap(changes);
    }

    /** Returns where the scenario comes from, once it was read. */
    Provenance provenance() {
        try {
            return ScenarioReader.provenance(SourceFiles.DISK, file(), changes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the scenario's file. */
    Path file() {
        return ScenarioReader.named(file);
    }
}
