package org.ionohaul.cli;

import java.util.List;
import org.ionohaul.trial.Trials;
import picocli.CommandLine;

/**
 * Runs what people run first. The launcher lets the Java machine keep the classes that it took, so that later starts need not
 * read them anew.
 */
final class Rehearsal {
    private Rehearsal() {}

    /**
     * Runs the commands, one after the other.
     *
     * @param arguments the scenario to run them on, and the folder for what a study writes
     */
    public static void main(String[] arguments) {
        CommandLine program = Main.commandLine(scenario -> new Trials(scenario)::run, Interruption.never());
        String scenario = arguments[0];
        for (List<String> command : List.of(
                List.of("check", scenario),
                List.of("study", scenario, "--trials", "10", "--size-trials", "2", "--out", arguments[1]))) {
            int exitCode = Main.execute(program, command.toArray(String[]::new));
            if (exitCode != ExitCode.DONE) {
                System.exit(exitCode);
            }
        }
    }
}
