package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;

/**
 * What one case comes to with some keys set to values of their own.
 *
 * @param modes one entry a mode, in the scenario's order
 * @param leaders the best mode, or those that can't be told apart from it, as in {@link CaseSummary}
 * @param margin how far it is ahead of the next; empty if there is no next
 */
public record CasePoint(List<ModePoint> modes, Leaders leaders, Optional<Margin> margin) {
    /** What may be said about which mode is best. */
    public enum Choice {
        /** No mode delivers anything. */
        NOTHING_ARRIVES,
        /** Several modes cannot be told apart. */
        TOO_CLOSE_TO_CALL,
        /** The best mode is ahead beyond chance, or the only one. */
        CLEAR
    }

    /** Copies the list. */
    public CasePoint {
        modes = List.copyOf(modes);
    }

    /** Returns what may be said about which mode is best. */
    public Choice choice() {
        if (modes.stream().allMatch(it -> it.delivered().value() == 0)) {
            return Choice.NOTHING_ARRIVES;
        }
        return leaders.isSole() ? Choice.CLEAR : Choice.TOO_CLOSE_TO_CALL;
    }

    /** Returns the index of the mode that ranks highest. */
    public int best() {
        return leaders.first();
    }

    static CasePoint of(CaseSummary summary, List<PairedEffect> effects) {
        return new CasePoint(
                ModePoint.all(summary, effects),
                summary.leaders(),
                summary.comparisons().isEmpty() ? Optional.empty() : Optional.of(Margin.of(summary)));
    }
}
