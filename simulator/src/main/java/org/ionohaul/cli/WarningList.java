package org.ionohaul.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ionohaul.scenario.Warning;

/** What is odd about a scenario that can be used as it stands. */
final class WarningList {
    private WarningList() {}

    static void print(List<Warning> warnings, PrintWriter out) {
        if (warnings.isEmpty()) {
            return;
        }
        tell(warnings, "used as it stands, if that is what you mean.", out);
        out.println();
    }

    /** Prints what is odd besides problems. */
    static void printBesides(List<Warning> warnings, PrintWriter out) {
        if (!warnings.isEmpty()) {
            out.println();
            tell(warnings, "leave it as it stands, if that is what you mean.", out);
        }
    }

    private static void tell(List<Warning> warnings, String whatToDo, PrintWriter out) {
        warnings.forEach(warning -> out.println(warning.text()));
        out.println((warnings.size() == 1 ? "1 warning" : warnings.size() + " warnings") + "; " + whatToDo);
    }
}
