package org.ionohaul.scenario;

import java.util.List;
import java.util.stream.Stream;

/** Thrown when a scenario, its mode files or what is read beside it can't be used as they stand: all that is wrong, at once. */
public final class ScenarioProblems extends Exception {
    private static final long serialVersionUID = 1;

    /** More than that nobody reads: what is mended first often mends the rest. */
    private static final int MOST_TOLD = 20;

    private final transient List<Problem> problems;
    private final transient List<Warning> warnings;

    /**
     * Makes a refusal.
     *
     * @param problems everything that is wrong, in order of file and place; at least one
     */
    public ScenarioProblems(List<Problem> problems) {
        this(problems, List.of());
    }

    /**
     * Makes a refusal.
     *
     * @param problems everything that is wrong, in order of file and place; at least one
     * @param warnings what is odd besides, in the same order
     */
    ScenarioProblems(List<Problem> problems, List<Warning> warnings) {
        super(String.join("\n", told(problems)));
        this.problems = List.copyOf(problems);
        this.warnings = List.copyOf(warnings);
    }

    /** Returns the problems as a person reads them: the first of them, and how many more there are. */
    public List<String> told() {
        return told(problems);
    }

    private static List<String> told(List<Problem> problems) {
        Stream<String> first = problems.stream().limit(MOST_TOLD).map(Problem::text);
        int more = problems.size() - MOST_TOLD;
        return Stream.concat(first, more > 0 ? Stream.of("... and " + more + " more like these.") : Stream.of())
                .toList();
    }

    /** Returns what is odd besides, in order of file and place. */
    public List<Warning> warnings() {
        return warnings;
    }

    /** Returns every problem, in order of file and place; at least one. */
    public List<Problem> problems() {
        return problems;
    }
}
