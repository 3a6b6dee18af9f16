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
        for (Warning warning : warnings) {
            out.println(warning.text());
        }
        out.println((warnings.size() == 1 ? "1 warning" : warnings.size() + " warnings")
                + "; used as it stands, if that is what you mean.");
        out.println();
    }
}
