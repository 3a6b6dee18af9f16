package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;

/**
 * What one case comes to with some keys set to values of their own.
 *
 * @param modes one entry a mode, in the scenario's order
 * @param best index of the best mode, as {@link CaseSummary} ranks them
 * @param margin how far it is ahead of the next; empty if there is no next
 */
public record CasePoint(List<ModePoint> modes, int best, Optional<Margin> margin) {
    /** What may be said about which mode is best. */
    public enum Standing {
        /** No mode delivers anything. */
        NOTHING_ARRIVES,
        /** The best mode and the next cannot be told apart. */
        TOO_CLOSE_TO_CALL,
        /** The best mode is ahead beyond chance, or the only one. */
        CLEAR
    }

    /** Copies the list. */
    public CasePoint {
        modes = List.copyOf(modes);
    }

    /** Returns what may be said about which mode is best. */
    public Standing standing() {
        if (modes.get(best).delivered().value() == 0) {
            return Standing.NOTHING_ARRIVES;
        }
        return margin.map(Margin::isClear).orElse(true) ? Standing.CLEAR : Standing.TOO_CLOSE_TO_CALL;
    }

    static CasePoint of(CaseSummary summary, List<PairedEffect> effects) {
        return new CasePoint(
                ModePoint.all(summary, effects),
                summary.ranking().get(0),
                summary.comparisons().isEmpty() ? Optional.empty() : Optional.of(Margin.of(summary)));
    }
}
