package org.ionohaul.cli;

import java.util.List;
import java.util.function.Function;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.TrialSource;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, and gives those that simulate what they need for it. */
final class Commands implements IFactory {
    /** All of them, in the order of the help. */
    static final List<Class<?>> ALL = List.of(
            StudyCommand.class,
            PromiseCommand.class,
            SkyCommand.class,
            VaryCommand.class,
            PageCommand.class,
            GridCommand.class,
            PlaceCommand.class,
            LearnCommand.class,
            RunsCommand.class,
            ForeseeCommand.class,
            NextCommand.class,
            NetCommand.class,
            CheckCommand.class,
            NewCommand.class,
            TraceCommand.class,
            ModeCommand.class,
            CommandLine.HelpCommand.class);

    private final IFactory others = CommandLine.defaultFactory();
    private final Function<Scenario, TrialSource> trialsOf;
    private final Interruption interruption;

    Commands(Function<Scenario, TrialSource> trialsOf, Interruption interruption) {
        this.trialsOf = trialsOf;
        this.interruption = interruption;
    }

    /**
     * Returns the commands that a command line needs: the one that it names first, or all where it names none or asks for help.
     *
     * <p>Making one costs hundredths of a second, making all of them a third of what {@code check} takes.
     */
    static List<Class<?>> askedBy(String... arguments) {
        return ALL.stream()
                .filter(it -> it != CommandLine.HelpCommand.class)
                .filter(it -> arguments.length > 0
                        && it.getAnnotation(CommandLine.Command.class).name().equals(arguments[0]))
                .findFirst()
                .<List<Class<?>>>map(List::of)
                .orElse(ALL);
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
        if (type == ForeseeCommand.class) {
            return type.cast(new ForeseeCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == PageCommand.class) {
            return type.cast(new PageCommand(interruption));
        }
        if (type == NextCommand.class) {
            return type.cast(new NextCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == NetCommand.class) {
            return type.cast(new NetCommand(new Simulation(trialsOf, interruption)));
        }
        if (type == GridCommand.class) {
            return type.cast(new GridCommand(new Simulation(trialsOf, interruption)));
        }
        return others.create(type);
    }
}
