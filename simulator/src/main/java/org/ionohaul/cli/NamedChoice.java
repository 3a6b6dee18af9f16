package org.ionohaul.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.ionohaul.scenario.Spelling;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A choice among things that have names. */
final class NamedChoice {
    private NamedChoice() {}

    /** Returns what an option names, the first of the choices if it is not given. */
    static <T> T of(
            CommandSpec spec, String option, Optional<String> name, List<T> choices, Function<T, String> nameOf) {
        if (name.isEmpty()) {
            return choices.get(0);
        }
        return choices.stream()
                .filter(it -> nameOf.apply(it).equals(name.get()))
                .findFirst()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        option + ": there is no \"" + name.get() + "\"\n    "
                                + Spelling.advice(
                                        name.get(), choices.stream().map(nameOf).toList())));
    }

    /** Returns a constant as it is written on the command line. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
