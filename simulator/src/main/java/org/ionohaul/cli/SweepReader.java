package org.ionohaul.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ionohaul.scenario.WrongValue;
import org.ionohaul.study.KeySweep;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Finds the keys that are to be varied among what the command line sets. */
final class SweepReader {
    private static final String EXAMPLE = "such as --set near.snr=\"6..18 dB\" or, as a list, \"6 dB | 9 dB\"";

    /** What decides which skies there are; the points compared must agree in these. */
    private static final Set<String> KEYS_OF_CHANCE = Set.of("seed", "trials");

    private final CommandLine command;
    private final Map<String, String> changes;

    SweepReader(CommandLine command, Map<String, String> changes) {
        this.command = command;
        this.changes = changes;
    }

    /**
     * Returns the keys with more than one value, at least one.
     *
     * @param most most keys that can be varied
     */
    List<KeySweep> sweeps(int most) {
        List<KeySweep> sweeps = new ArrayList<>();
        changes.forEach((key, text) -> sweep(key, text).ifPresent(sweeps::add));
        if (sweeps.isEmpty()) {
            throw wrong("Give a key a range of values, " + EXAMPLE + "." + singleValues());
        }
        if (sweeps.size() > most) {
            throw wrong("Of these keys, vary at most " + most + " at a time, or any number each alone with --tornado: "
                    + String.join(", ", sweeps.stream().map(KeySweep::key).toList()));
        }
        return sweeps;
    }

    private String singleValues() {
        if (changes.isEmpty()) {
            return "";
        }
        return " Just one value is given for: " + String.join(", ", changes.keySet());
    }

    private Optional<KeySweep> sweep(String key, String text) {
        try {
            Optional<KeySweep> sweep = KeySweep.parse(key, text);
            if (sweep.isPresent() && KEYS_OF_CHANCE.contains(key)) {
                throw new WrongValue(
                        "cannot be varied, since every value is tried under the same skies",
                        "give one value with --" + key);
            }
            return sweep;
        } catch (WrongValue e) {
            String remedy = e.remedy().isEmpty() ? "" : "\n    " + e.remedy();
            throw new ParameterException(command, "--set " + key + ": " + e.message() + remedy, e);
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(command, message);
    }
}
