package org.ionohaul.cli;

/** What the program tells the shell when it ends; part of its contract with scripts. */
final class ExitCode {
    /** Everything asked for was done. */
    static final int DONE = 0;
    /** Something failed that should not have: a fault of the program or the machine. */
    static final int FAILED = 1;
    /** The command line or a scenario file is wrong; nothing was simulated or written. */
    static final int BAD_INPUT = 2;
    /** Interrupted: what was done until then is complete in itself and marked as partial. */
    static final int PARTIAL = 3;
    /** Results could not be written; earlier results are untouched. */
    static final int NOT_WRITTEN = 4;

    private ExitCode() {}
}
