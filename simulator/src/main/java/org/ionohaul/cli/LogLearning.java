package org.ionohaul.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Spelling;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a log may correct besides the scenario's inputs, and which of them change from day to day. */
final class LogLearning {
    private static final double MOST_GAP_DB = 20;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--daily",
            paramLabel = "KEY",
            description =
                    "An uncertain input that changes from day to day, such as the noise of the neighbours: each date in"
                            + " the log has a value of its own, and the forecast is for another day; may be repeated. The level of the day,"
                            + " sky.day-to-day, always does.")
    private List<String> dailyKeys = new ArrayList<>();

    @Option(
            names = "--gap",
            paramLabel = "DB",
            description =
                    "By how much modes may fall short of their models, or exceed them, such as \"2 dB\": the standard"
                            + " deviation of what is thought possible; learned for each mode. Nothing if not given.")
    private Optional<String> gap = Optional.empty();

    /** Returns the inputs that change from day to day, and sees to it that there is anything to learn. */
    Set<String> daily(Understood understood) {
        List<String> keys = understood.scenario().sky().uncertainKeys();
        require(
                gapDb() > 0 || !keys.isEmpty(),
                "the scenario is sure of everything; write what you don't know as a distribution, such as --set"
                        + " near.snr=\"12 dB ± 4 dB\"");
        for (String key : dailyKeys) {
            require(
                    keys.contains(key),
                    "--daily: " + key + " is no uncertain input of the scenario; " + Spelling.advice(key, keys));
        }
        return new TreeSet<>(dailyKeys);
    }

    /** Returns by how much modes may fall short of their models, in dB. */
    double gapDb() {
        try {
            double gapDb = gap.isPresent() ? Quantity.decibels(gap.get()) : 0;
            require(gapDb >= 0 && gapDb <= MOST_GAP_DB, "--gap must be from 0 to 20 dB");
            return gapDb;
        } catch (WrongValue e) {
            throw new ParameterException(spec.commandLine(), "--gap: " + e.message() + "\n    " + e.remedy(), e);
        }
    }

    /** Returns what was asked for here, as parts of the name of a folder. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        new TreeSet<>(dailyKeys).forEach(it -> names.add("daily-" + it));
        gap.ifPresent(it -> names.add("gap-" + it));
        return names;
    }

    /** Returns the text of a scenario, with the changes made on the command line. */
    static ScenarioText text(ScenarioChoice choice) {
        try {
            return new ScenarioText(SourceFiles.DISK.text(choice.file()), choice.changes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
