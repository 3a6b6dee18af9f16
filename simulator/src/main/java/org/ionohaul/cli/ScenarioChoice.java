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
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.rendering.FolderName;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.KeyName;
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
    private static final int WIDTH = 80;

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
    private boolean isWhatIfTold;

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
        tellWhatIf(understood.scenario(), without);
        return understood;
    }

    /** Returns what the command line says instead of the scenario file, by key. */
    Map<String, String> changes() {
        Map<String, String> changes = new LinkedHashMap<>();
        settings.forEach(it -> changes.put(it.key(), it.value()));
        return Collections.unmodifiableMap(changes);
    }

    /**
     * Returns the name of a folder of results: the scenario, its seed, what was changed on the command line, so that a
     * what-if never takes the place of the file's own results; and more.
     */
    String folderName(Scenario scenario, Object... more) {
        return folderName(scenario, Set.of(), more);
    }

    /** Returns such a name without what was changed of some keys. */
    String folderName(Scenario scenario, Set<String> without, Object... more) {
        List<Object> names = new ArrayList<>(List.of(scenario.name(), scenario.seed()));
        Map<String, String> changes = new TreeMap<>(whatIf());
        changes.keySet().removeAll(without);
        changes.forEach((key, value) -> names.add(key + "-" + value));
        names.addAll(List.of(more));
        return FolderName.of(names.toArray());
    }

    /** Returns the changes that make it another question; how many trials are run, and which, does not. */
    private Map<String, String> whatIf() {
        Map<String, String> changes = new LinkedHashMap<>(changes());
        changes.keySet().removeAll(List.of("seed", "trials"));
        return changes;
    }

    /** Says once what is not as in the file. */
    private void tellWhatIf(Scenario scenario, Set<String> without) {
        String changed = whatIf().entrySet().stream()
                .filter(change -> !without.contains(change.getKey()))
                .map(change -> KeyName.withKey(scenario, change.getKey()) + " = " + change.getValue())
                .collect(Collectors.joining("; "));
        if (!changed.isEmpty() && !isWhatIfTold) {
            TextWrap.lines("What if: " + changed + " (the rest as in the file)", "", WIDTH)
                    .forEach(spec.commandLine().getOut()::println);
            spec.commandLine().getOut().println();
            isWhatIfTold = true;
        }
    }

    /** Returns where the scenario comes from, once it was read. */
    Provenance provenance() {
        try {
            return ScenarioReader.provenance(SourceFiles.DISK, file(), changes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns where the scenario comes from and a file that was laid beside it, once both were read. */
    Provenance provenance(Path beside) {
        try {
            return provenance()
                    .with(new InputFile(String.valueOf(beside.getFileName()), SourceFiles.DISK.text(beside)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the scenario's file. */
    Path file() {
        return ScenarioReader.named(file);
    }
}
