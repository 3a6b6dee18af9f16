package org.ionohaul.livepage;

import java.util.List;
import org.ionohaul.rendering.Chart;

/**
 * A round, as the page shows it: a question, or what became of the answer.
 *
 * @param round its number
 * @param situation what an operator would say of it, a sentence each
 * @param modes what people call the modes that race
 * @param token what a page of this server knows
 * @param asked what was filled in
 * @param verdict what became of it, a sentence or two each; empty before the race
 * @param race the race as a picture; empty before it
 * @param score how well forecasts held so far, a sentence each; empty if none counts yet
 */
public record LessonView(
        int round,
        List<String> situation,
        List<String> modes,
        String token,
        Filled asked,
        List<String> verdict,
        List<Chart> race,
        List<String> score) {
    /**
     * What was filled in.
     *
     * @param winner the mode that is named as the first, by its number from 1; empty if none is
     * @param sureness how sure, in %
     * @param spans a range of minutes a mode
     * @param problems what is wrong with each of these: winner and sureness first, then each range; empty where nothing is
     */
    public record Filled(String winner, String sureness, List<String> spans, List<String> problems) {
        /** Copies the lists. */
        public Filled {
            spans = List.copyOf(spans);
            problems = List.copyOf(problems);
        }

        /** Returns whether all of it makes sense. */
        public boolean isRight() {
            return problems.stream().allMatch(String::isEmpty);
        }
    }

    /** Returns whether the race is over. */
    public boolean isPlayed() {
        return !race.isEmpty();
    }
}
