package org.ionohaul.grid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ionohaul.scenario.Problem;

/** What is wrong alike in many rows, told once: a wrong head is wrong in every row of a table that may have a hundred thousand. */
public final class AlikeProblems {
    private AlikeProblems() {}

    /**
     * Returns the first of problems that differ in their place alone, with in how many rows it comes up.
     *
     * @param problems in order of their places
     */
    public static List<Problem> once(List<Problem> problems) {
        Map<List<String>, List<Problem>> alike = new LinkedHashMap<>();
        for (Problem it : problems) {
            alike.computeIfAbsent(List.of(it.file(), it.key(), it.message()), what -> new ArrayList<>())
                    .add(it);
        }
        return alike.values().stream().map(AlikeProblems::first).toList();
    }

    private static Problem first(List<Problem> alike) {
        Problem first = alike.get(0);
        return alike.size() == 1
                ? first
                : new Problem(
                        first.file(),
                        first.line(),
                        first.column(),
                        first.key(),
                        first.message() + " (so in " + alike.size() + " rows)",
                        first.remedy());
    }
}
