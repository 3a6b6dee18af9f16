package org.ionohaul.scenario;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when a scenario or its mode files can't be used as they stand: everything that is wrong, at once. */
public final class ScenarioProblems extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    ScenarioProblems(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Returns every problem, in order of file and place; at least one. */
    public List<Problem> problems() {
        return problems;
    }
}
