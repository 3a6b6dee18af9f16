package org.ionohaul.cli;

import java.io.PrintWriter;

/** What is said when something failed that should not have: what happened, and what to do about it. */
final class LastResort {
    private LastResort() {}

    /** Tells of a failure; how it came about stands below, for whoever mends the program. */
    static void tell(Throwable failure, PrintWriter err) {
        Throwable root = rootOf(failure);
        if (root instanceof OutOfMemoryError) {
            err.println("ionohaul failed: the memory is used up.");
            err.println("    Ask for fewer trials at a time, or give it more memory with JAVA_TOOL_OPTIONS=-Xmx2g.");
        } else {
            err.println("ionohaul failed: " + root);
            err.println(
                    "    This should not have happened. Please report it with your command, the scenario and mode files and"
                            + " the lines below.");
        }
        err.println("    Earlier results are untouched.");
        failure.printStackTrace(err);
        err.flush();
    }

    private static Throwable rootOf(Throwable failure) {
        Throwable root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root;
    }
}
