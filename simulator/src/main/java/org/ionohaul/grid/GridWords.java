package org.ionohaul.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;

/**
 * What is said of a grid, on a terminal and on a page.
 *
 * @param scenario the scenario of its first row
 */
record GridWords(Scenario scenario) {
    /** How to take what is counted. */
    static final String READING =
            "A row counts as kept or missed only beyond chance, which errs in up to 5 of 100 rows; a mode is named"
                    + " only where the paired tests of its row support it against every other.";

    /** Letters tell modes apart in the narrow places of a map. */
    private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /** Returns how the rows of a case divide, a sentence on the modes and one a deadline. */
    List<String> sentences(GridTally.OfCase it) {
        int rows =
                it.rowsByLeaders().values().stream().mapToInt(Integer::intValue).sum();
        String leaders = it.rowsByLeaders().entrySet().stream()
                .sorted(Map.Entry.<List<String>, Integer>comparingByValue().reversed())
                .map(found -> names(found.getKey()) + " on " + SizeText.grouped(found.getValue()))
                .collect(Collectors.joining("; "));
        List<String> sentences = new ArrayList<>();
        sentences.add("Best of " + SizeText.grouped(rows) + (rows == 1 ? " row: " : " rows: ") + leaders + ".");
        it.deadlines().forEach(deadline -> sentences.add(sentence(deadline)));
        return sentences;
    }

    private static String sentence(GridTally.OfDeadline deadline) {
        return "By " + time(deadline) + ", on 9 of 10 trials with the mode that suits: kept on "
                + SizeText.grouped(deadline.kept()) + ", missed with every mode on "
                + SizeText.grouped(deadline.missed()) + ", open on " + SizeText.grouped(deadline.open())
                + (deadline.open() == 0 ? "." : " (more trials would tell).");
    }

    /** Returns a deadline, or from where to where it goes over the rows. */
    static String time(GridTally.OfDeadline deadline) {
        String shortest = TimeText.given(deadline.shortestSeconds());
        return deadline.shortestSeconds() == deadline.longestSeconds()
                ? shortest
                : shortest + " to " + TimeText.given(deadline.longestSeconds());
    }

    /** Returns modes that may be best, by their titles. */
    String names(List<String> modes) {
        if (modes.isEmpty()) {
            return "nothing arrives";
        }
        return modes.size() > 2 && modes.size() == scenario.modes().size()
                ? "any mode"
                : modes.stream().map(this::title).collect(Collectors.joining(" or "));
    }

    /** Returns what people call a mode. */
    String title(String name) {
        return scenario.modes().stream()
                .filter(it -> it.name().equals(name))
                .map(Mode::title)
                .findFirst()
                .orElse(name);
    }

    /** Returns a letter a mode. */
    String letters(List<String> modes) {
        return modes.stream().map(this::letter).sorted().collect(Collectors.joining());
    }

    /** Returns which letter is which mode. */
    String legend() {
        return scenario.modes().stream()
                .sorted(Comparator.comparing(Mode::name))
                .map(it -> letter(it.name()) + " " + it.title())
                .collect(Collectors.joining(", "));
    }

    private String letter(String mode) {
        int place = scenario.modes().stream().map(Mode::name).sorted().toList().indexOf(mode) % LETTERS.length();
        return LETTERS.substring(place, place + 1);
    }
}
