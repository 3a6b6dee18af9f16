package org.ionohaul.analysis;

import java.util.Map;
import java.util.function.Predicate;
import org.ionohaul.session.Ending;
import org.ionohaul.statistics.Proportion;

/**
 * Why sessions ended that did not deliver everything.
 *
 * @param trials how many sessions there were in all, at least one
 * @param counts how many of the failed ones ended for each reason, the wrong ones apart; none where a reason is left out
 * @param wrong how many brought everything over, but wrong, and nobody noticed
 */
public record Failures(int trials, Map<Ending, Integer> counts, int wrong) {
    /** Copies the counts. */
    public Failures {
        counts = Map.copyOf(counts);
    }

    /** Returns how many failed for one reason. */
    public Proportion of(Ending ending) {
        return where(it -> it == ending);
    }

    /** Returns how many never had a call answered, whatever ended them. */
    public Proportion neverLinked() {
        return where(Ending::isWithoutLink);
    }

    /** Returns how many had a link, lost it, and used up their redials. */
    public Proportion linksLost() {
        return of(Ending.LINK_LOST);
    }

    /** Returns how many had a link until the operator of the station that dials broke off. */
    public Proportion outOfPatience() {
        return of(Ending.OUT_OF_PATIENCE);
    }

    /** Returns how many had a link and were still running at the horizon. */
    public Proportion stillSending() {
        return of(Ending.AT_HORIZON);
    }

    /** Returns how many brought everything over, but some of it wrong, and nobody noticed. */
    public Proportion deliveredWrong() {
        return new Proportion(wrong, trials);
    }

    private Proportion where(Predicate<Ending> is) {
        int hits = counts.entrySet().stream()
                .filter(it -> is.test(it.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
        return new Proportion(hits, trials);
    }
}
