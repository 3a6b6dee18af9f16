package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Function;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.study.NoRoomForTrials;
import org.ionohaul.study.TrialSource;
import org.ionohaul.trial.Trials;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: finds the command asked for, runs it and ends with its exit code. */
@Command(
        name = "ionohaul",
        description = {
            "Simulates file transfers over HF radio: how long they take with each mode, how sure that is, and why.",
            ""
        },
        versionProvider = ProgramVersion.class,
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:failed: a fault of the program or the machine",
            "2:the command line or a scenario file is wrong; nothing was simulated or written",
            "3:interrupted; what was done is complete in itself and marked PARTIAL",
            "4:results could not be written; earlier results are untouched"
        },
        footerHeading = "%n",
        footer = {
            "Begin with: ionohaul study scenarios/river-watch.toml",
            "",
            "A training and planning aid. Follow your local licence rules and your unit's plan; never stake a life on one"
                    + " number."
        })
public final class Main {
    private static final int WIDTH = 80;

    Main() {}

    /**
     * Runs the program and ends the Java machine.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        Interruption interruption = Interruption.watched();
        Commands commands = new Commands(scenario -> new Trials(scenario)::run, interruption);
        int exitCode = execute(commandLine(commands, Commands.askedBy(arguments)), arguments);
        interruption.finish(exitCode);
        System.exit(exitCode);
    }

    /** Executes a command line, and has the last word on whatever goes wrong in it. */
    @SuppressWarnings("CatchAndPrintStackTrace")
    static int execute(CommandLine command, String... arguments) {
        try {
            return command.execute(arguments);
        } catch (Throwable failure) {
            LastResort.tell(failure, PlainPrinter.to(command.getErr()));
            return ExitCode.FAILED;
        }
    }

    /** Returns the program as a whole, ready to execute. */
    static CommandLine commandLine(Function<Scenario, TrialSource> trialsOf, Interruption interruption) {
        return commandLine(new Commands(trialsOf, interruption), Commands.ALL);
    }

    private static CommandLine commandLine(Commands factory, List<Class<?>> commands) {
        CommandLine program = new CommandLine(new Main(), factory);
        // Made apart: only so are the options added that a command's questions make.
        commands.forEach(it -> program.addSubcommand(new CommandLine(it, factory)));
        return program.setUsageHelpWidth(WIDTH)
                .setExecutionStrategy(Main::runPlainly)
                .setParameterExceptionHandler(Main::pointToHelp)
                .setExecutionExceptionHandler((failure, command, parsed) -> explain(failure, command));
    }

    private static int pointToHelp(ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = PlainPrinter.to(command.getErr());
        Slip.of(failure, arguments).ifPresentOrElse(err::println, () -> {
            err.println(failure.getMessage());
            UnmatchedArgumentException.printSuggestions(failure, err);
        });
        err.println("    " + command.getCommandSpec().qualifiedName() + " --help tells more.");
        return ExitCode.BAD_INPUT;
    }

    /** Help is ours and may be bold; what a command prints may come from anybody's files. */
    private static int runPlainly(ParseResult parsed) {
        List<CommandLine> commands = parsed.asCommandLineList();
        if (commands.stream().noneMatch(Main::asksForHelp)) {
            for (CommandLine command : commands) {
                command.setOut(PlainPrinter.to(command.getOut()));
                command.setErr(PlainPrinter.to(command.getErr()));
            }
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    private static boolean asksForHelp(CommandLine command) {
        return command.isUsageHelpRequested()
                || command.isVersionHelpRequested()
                || command.getCommand() instanceof CommandLine.HelpCommand;
    }

    private static int explain(Exception failure, CommandLine command) {
        PrintWriter err = command.getErr();
        if (failure instanceof ScenarioProblems problems) {
            ProblemList.print(problems, err);
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof NotWritten || failure instanceof NoRoomForTrials) {
            err.println(failure.getMessage());
            return ExitCode.NOT_WRITTEN;
        }
        LastResort.tell(failure, err);
        return ExitCode.FAILED;
    }
}
