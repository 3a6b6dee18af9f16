package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Understood;
import org.ionohaul.sheet.ScenarioSheet;
import org.ionohaul.traffic.NetSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says whether a scenario file and its modes are in order. */
@Command(
        name = "check",
        description = {
            "Reads a scenario or a net and its mode files, lists everything that is wrong and warns of what is odd; then says in"
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
        if (NetReader.isNet(SourceFiles.DISK, choice.file())) {
            NetReader.Read read = NetReader.read(SourceFiles.DISK, choice.file(), choice.changes());
            WarningList.print(read.warnings(), spec.commandLine().getErr());
            return tell(contents(read.scenario()), new NetSheet(read.scenario()).lines());
        }
        Understood understood = choice.understand(Map.of());
        return tell(contents(understood.scenario()), new ScenarioSheet(understood).lines());
    }

    private int tell(String contents, List<String> sheet) {
        PrintWriter terminal = spec.commandLine().getOut();
        TextWrap.lines(choice.file() + ": in order. " + contents, "", WIDTH).forEach(terminal::println);
        terminal.println();
        sheet.forEach(terminal::println);
        terminal.flush();
        return ExitCode.DONE;
    }

    private static String contents(NetScenario net) {
        return counted(net.stations(), "station") + ", 1 gateway, " + counted(net.trials(), "trial") + ".";
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
