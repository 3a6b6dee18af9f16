package org.ionohaul.rendering;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * A line for a terminal, in pieces that may look different where the terminal has colours; without them it says the same.
 *
 * @param pieces the pieces, from left to right
 */
public record StyledLine(List<Piece> pieces) {
    /** Copies the list. */
    public StyledLine {
        pieces = List.copyOf(pieces);
    }

    /**
     * Part of a line.
     *
     * @param text what it says
     * @param isStrong whether it stands out
     * @param mode place of the mode that it names, see {@link ModeOrder}, if it names one
     */
    public record Piece(String text, boolean isStrong, OptionalInt mode) {
        /** Returns a piece that looks like any other. */
        public static Piece plain(String text) {
            return new Piece(text, false, OptionalInt.empty());
        }
    }

    /** Returns a line that looks like any other. */
    public static StyledLine plain(String text) {
        return new StyledLine(List.of(Piece.plain(text)));
    }

    /** Returns a line that stands out. */
    public static StyledLine strong(String text) {
        return new StyledLine(List.of(new Piece(text, true, OptionalInt.empty())));
    }

    /** Returns what the line says. */
    public String text() {
        return pieces.stream().map(Piece::text).collect(Collectors.joining());
    }
}
