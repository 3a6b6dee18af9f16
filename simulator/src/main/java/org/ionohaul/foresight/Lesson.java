package org.ionohaul.foresight;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.WrongValue;

/** Rounds to be played, and those that were: the same for whoever asks, on a terminal or on a page. */
public interface Lesson {
    /**
     * Returns what is shown in a round.
     *
     * @param round its number, from 1
     */
    Situation situation(int round) throws ScenarioProblems, WrongValue;

    /** Runs a round's race; empty if interrupted. */
    Optional<Race> race(Situation situation);

    /** Returns what became of a guess. */
    Played played(Race race, Guess guess);

    /** Returns all rounds that count. */
    List<Played> all() throws IOException;

    /** Remembers a round unless it was played before, and returns whether it counts. */
    boolean keep(Played played) throws IOException;

    /** Returns the first round that was not played yet. */
    int next() throws IOException, ScenarioProblems, WrongValue;
}
