package org.ionohaul.cli;

import java.io.PrintWriter;
import org.ionohaul.rendering.StyledLine;
import org.ionohaul.rendering.StyledLine.Piece;

/**
 * What a command prints on: texts go through {@link PlainWriter}, so that the only signs a terminal obeys are those that are set
 * here.
 */
final class PlainPrinter extends PrintWriter {
    private static final String SIGN = "\u001b[";
    private static final String END = SIGN + "0m";
    private static final String STRONG = "1";

    /** Those of 256 colours that are nearest to the modes' in pictures and can be read on black and on white. */
    private static final int[] MODES = {32, 166, 36, 175, 74, 172};

    private final PrintWriter terminal;

    private PlainPrinter(PrintWriter terminal) {
        super(new PlainWriter(terminal), true);
        this.terminal = terminal;
    }

    /** Returns a writer to the same place that lets nothing through that a terminal would obey; itself if it is one. */
    static PlainPrinter to(PrintWriter terminal) {
        return terminal instanceof PlainPrinter plain ? plain : new PlainPrinter(terminal);
    }

    /**
     * Prints a line.
     *
     * @param isColoured whether it may look different from others
     */
    void print(StyledLine line, boolean isColoured) {
        for (Piece piece : line.pieces()) {
            String style = isColoured ? style(piece) : "";
            if (style.isEmpty()) {
                print(piece.text());
            } else {
                terminal.print(SIGN + style + "m");
                print(piece.text());
                terminal.print(END);
            }
        }
        println();
    }

    private static String style(Piece piece) {
        String strong = piece.isStrong() ? STRONG : "";
        int place = piece.mode().orElse(MODES.length);
        return place < MODES.length ? strong + (strong.isEmpty() ? "" : ";") + "38;5;" + MODES[place] : strong;
    }
}
