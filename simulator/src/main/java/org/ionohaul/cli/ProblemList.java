package org.ionohaul.cli;

import java.io.PrintWriter;
import org.ionohaul.scenario.ScenarioProblems;

/** What is wrong with a scenario, problem by problem. */
final class ProblemList {
    private ProblemList() {}

    static void print(ScenarioProblems problems, PrintWriter out) {
        problems.told().forEach(out::println);
        int count = problems.problems().size();
        out.println((count == 1 ? "1 problem" : count + " problems") + "; nothing was simulated or written.");
        WarningList.printBesides(problems.warnings(), out);
    }
}
