package org.ionohaul.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.ionohaul.scenario.NetReader;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.traffic.NetFindings;
import org.ionohaul.traffic.NetText;
import org.ionohaul.trial.NetTrial;
import org.ionohaul.trial.NetTrials;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how many stations fare that share channels and one gateway. */
@Command(
        name = "net",
        description = {
            "Says how the stations of a net fare that call one gateway: how long each kind of message takes from written to"
                    + " delivered, how sure its deadlines are, who waits, what is lost to collisions.",
            ""
        },
        mixinStandardHelpOptions = true)
final class NetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The net's file; its mode lies in the folder modes beside it.")
    private Path file = Path.of("");

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Takes this value instead of the file's, such as --set group.1.count=20; may be repeated.",
            converter = Setting.Converter.class)
    private List<Setting> settings = new ArrayList<>();

    @Mixin
    private final Simulation simulation;

    NetCommand(Simulation simulation) {
        this.simulation = simulation;
    }

    @Override
    public Integer call() throws ScenarioProblems {
        NetReader.Read read = NetReader.read(SourceFiles.DISK, ScenarioReader.named(file), changes());
        WarningList.print(read.warnings(), spec.commandLine().getErr());
        NetScenario scenario = read.scenario();
        NetTrials trials = new NetTrials(scenario);
        List<NetTrial> done =
                simulation.inPool("Trials", scenario.trials(), pool -> pool.run(scenario.trials(), trials::run));
        PrintWriter terminal = spec.commandLine().getOut();
        new NetText(NetFindings.of(scenario, done)).lines().forEach(terminal::println);
        terminal.flush();
        return ExitCode.DONE;
    }

    private Map<String, String> changes() {
        Map<String, String> changes = new LinkedHashMap<>();
        settings.forEach(it -> changes.put(it.key(), it.value()));
        changes.putAll(simulation.changes());
        return changes;
    }
}
