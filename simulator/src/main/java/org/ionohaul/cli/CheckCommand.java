package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.Map;
import java.util.concurrent.Callable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.Understood;
import org.ionohaul.sheet.ScenarioSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says whether a scenario file and its modes are in order. */
@Command(
        name = "check",
        description = {
            "Reads a scenario file and its mode files, lists everything that is wrong and warns of what is odd; then says in"
                    + " plain units what it understood. Simulates nothing.",
            ""
        },
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private static final int WIDTH = 80;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private final ScenarioChoice choice = new ScenarioChoice();

    @Override
    public Integer call() throws ScenarioProblems {
        Understood understood = choice.understand(Map.of());
        PrintWriter terminal = spec.commandLine().getOut();
        TextWrap.lines(choice.file() + ": in order. " + contents(understood.scenario()), "", WIDTH)
                .forEach(terminal::println);
        terminal.println();
        new ScenarioSheet(understood).lines().forEach(terminal::println);
        terminal.flush();
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
