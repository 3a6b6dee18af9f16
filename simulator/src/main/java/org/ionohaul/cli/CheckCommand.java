package org.ionohaul.cli;

import java.util.concurrent.Callable;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says whether a scenario file and its modes are in order. */
@Command(
        name = "check",
        description = "Reads a scenario file and its mode files and lists everything that is wrong; simulates nothing.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Override
    public Integer call() throws ScenarioProblems {
        Scenario scenario = choice.read();
        spec.commandLine().getOut().println(choice.file() + ": in order. " + contents(scenario));
        return ExitCode.DONE;
    }

    private static String contents(Scenario scenario) {
        int directions = scenario.transfers().stream()
                .mapToInt(it -> it.directions().size())
                .sum();
        return counted(scenario.modes().size(), "mode") + ", "
                + counted(scenario.transfers().size(), "transfer") + " (" + counted(directions, "direction") + "), "
                + counted(scenario.trials(), "trial") + ".";
    }

    private static String counted(int count, String what) {
        return count == 1 ? "1 " + what : count + " " + what + "s";
    }
}
