package org.ionohaul.scenario;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Guesses which valid word a mistyped one was meant to be. */
public final class Spelling {
    private static final int LONGEST_WORD = 100;

    private Spelling() {}

    /** Returns the nearest of the words, unless even that is more than about a third different; ties go by alphabet. */
    public static Optional<String> nearest(String typed, Collection<String> words) {
        if (typed.length() > LONGEST_WORD) {
            return Optional.empty();
        }
        return words.stream()
                .filter(word -> distance(typed, word) <= (word.length() + 2) / 3)
                .min(Comparator.<String>comparingInt(word -> distance(typed, word))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Returns advice that names the nearest word or, failing that, all of them. */
    public static String advice(String typed, Collection<String> words) {
        return nearest(typed, words)
                .map(word -> "did you mean \"" + word + "\"?")
                .orElseGet(() -> words.isEmpty() ? "" : "valid: " + String.join(", ", words));
    }

    private static int distance(String typed, String word) {
        return LevenshteinDistance.getDefaultInstance()
                .apply(typed.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
    }
}
