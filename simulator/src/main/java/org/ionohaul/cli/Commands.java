package org.ionohaul.cli;

import java.util.function.Function;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.TrialSource;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, and gives those that simulate what they need for it. */
final class Commands implements IFactory {
    private final IFactory others = CommandLine.defaultFactory();
    private final Function<Scenario, TrialSource> trialsOf;
    private final Interruption interruption;

    Commands(Function<Scenario, TrialSource> trialsOf, Interruption interruption) {
        this.trialsOf = trialsOf;
        this.interruption = interruption;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        if (type == StudyCommand.class) {
            return type.cast(new StudyCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == PromiseCommand.class) {
            return type.cast(new PromiseCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == VaryCommand.class) {
            return type.cast(new VaryCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == PlaceCommand.class) {
            return type.cast(new PlaceCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == LearnCommand.class) {
            return type.cast(new LearnCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == RunsCommand.class) {
            return type.cast(new RunsCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == GridCommand.class) {
            return type.cast(new GridCommand(new Simulation(trialsOf, interruption)));
        }
        return others.create(type);
    }
}
