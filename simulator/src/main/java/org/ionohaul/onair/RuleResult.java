package org.ionohaul.onair;

import java.util.List;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/**
 * How often a rule names which mode.
 *
 * @param rule the rule
 * @param named how often each mode was named
 * @param selfNamed how often each was where one mode stood under all names, the first name's runs made first
 * @param trials in how many comparisons each
 */
public record RuleResult(Rule rule, List<Integer> named, List<Integer> selfNamed, int trials) {
    /** Copies the lists. */
    public RuleResult {
        named = List.copyOf(named);
        selfNamed = List.copyOf(selfNamed);
    }

    /** Returns the chance that a mode is named. */
    public Estimate naming(int mode) {
        return share(named.get(mode));
    }

    /** Returns the chance that any other than a mode is named. */
    public Estimate namingOther(int mode) {
        return share(sum(named) - named.get(mode));
    }

    /** Returns the chance that any mode is named. */
    public Estimate answering() {
        return share(sum(named));
    }

    /** Returns the chance that a mode is named that is the same as all others: the rate of false alarms. */
    public Estimate falseAlarm() {
        return share(sum(selfNamed));
    }

    /** Returns how often a mode beats itself because its runs are those of this name. */
    public Estimate selfNaming(int name) {
        return share(selfNamed.get(name));
    }

    private Estimate share(int hits) {
        return new Proportion(hits, trials).wilson(Estimate.CONFIDENCE);
    }

    private static int sum(List<Integer> counts) {
        return counts.stream().mapToInt(it -> it).sum();
    }
}
