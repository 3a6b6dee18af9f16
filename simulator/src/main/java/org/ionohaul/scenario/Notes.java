package org.ionohaul.scenario;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** What there is to tell of files while they are being read, each thing once. */
final class Notes {
    private final SortedSet<Problem> problems = new TreeSet<>();
    private final SortedSet<Warning> warnings = new TreeSet<>();

    /** Adds something that is wrong. */
    void add(Problem problem) {
        problems.add(problem);
    }

    /** Adds something that is odd. */
    void add(Warning warning) {
        warnings.add(warning);
    }

    /** Returns what is wrong, in order of file and place. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** Returns what is odd, in order of file and place. */
    List<Warning> warnings() {
        return List.copyOf(warnings);
    }
}
