package org.ionohaul.cli;

import java.util.Optional;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which of a scenario's transfers, and which way. */
final class CaseChoice {
    @Option(names = "--transfer", paramLabel = "NAME", description = "Which transfer; the file's first if not given.")
    private Optional<String> transfer = Optional.empty();

    @Option(
            names = "--direction",
            paramLabel = "WAY",
            description = "upload or download; the transfer's first if not given.")
    private Optional<String> direction = Optional.empty();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    /** Returns the transfer. */
    Transfer transfer(Scenario scenario) {
        return NamedChoice.of(spec, "--transfer", transfer, scenario.transfers(), Transfer::name);
    }

    /** Returns which way it goes. */
    Direction direction(Transfer chosen) {
        return NamedChoice.of(spec, "--direction", direction, chosen.directions(), NamedChoice::word);
    }
}
