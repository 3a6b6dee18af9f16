package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;

/**
 * The best mode, or the modes that can't be told apart from it.
 *
 * @param modes their indices, that which ranks highest first, at least one
 * @param alike by how much they may differ; empty if there is one only
 */
public record Leaders(List<Integer> modes, Optional<Alike> alike) {
    /** Copies the list. */
    public Leaders {
        modes = List.copyOf(modes);
    }

    /** Returns whether one mode is ahead of every other beyond chance, or is the only one. */
    public boolean isSole() {
        return modes.size() == 1;
    }

    /** Returns the index of the one that ranks highest. */
    public int first() {
        return modes.get(0);
    }
}
