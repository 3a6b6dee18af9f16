package org.ionohaul.cli;

import org.ionohaul.rendering.ResultFolder;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether to go on with what was interrupted. */
final class Resumption {
    @Option(
            names = "--resume",
            description =
                    "Goes on where the same command was interrupted, with the same files and program; the results are"
                            + " the same as without the interruption.")
    private boolean isResumed;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    /**
     * Begins a run, or goes on with one.
     *
     * @param folder where the complete results will lie
     * @param fingerprint everything that they depend on
     */
    UnfinishedRun open(ResultFolder folder, String fingerprint) throws NotWritten {
        return UnfinishedRun.open(folder, fingerprint, isResumed, spec.commandLine());
    }
}
