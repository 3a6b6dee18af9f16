package org.ionohaul.cli;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ionohaul.scenario.Spelling;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Slips on the command line that the parser's own words would not help to find. */
final class Slip {
    private static final Pattern CURLY = Pattern.compile("[“”„‟]");

    private Slip() {}

    /** Returns what to tell of a wrong command line; empty if the parser's words will do. */
    static Optional<String> of(ParameterException failure, String[] arguments) {
        Optional<String> curly =
                Arrays.stream(arguments).filter(it -> CURLY.matcher(it).find()).findFirst();
        if (curly.isPresent()) {
            return Optional.of("There are curly quotation marks, which mean nothing to a shell: " + curly.get()
                    + "\n    type straight ones, such as --by \"15 min\"");
        }
        CommandSpec asked = failure.getCommandLine().getCommandSpec();
        return failure instanceof UnmatchedArgumentException unmatched && asked.parent() == null
                ? noCommand(unmatched.getUnmatched().get(0), asked.subcommands().keySet())
                : Optional.empty();
    }

    private static Optional<String> noCommand(String typed, Collection<String> commands) {
        if (typed.startsWith("-")) {
            return Optional.empty();
        }
        String remedy = typed.endsWith(".toml")
                ? "say what to do with it, such as: ionohaul study " + typed
                : Spelling.advice(typed, commands);
        return Optional.of("There is no command \"" + typed + "\".\n    " + remedy);
    }
}
