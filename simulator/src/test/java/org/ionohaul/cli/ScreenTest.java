package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.OptionalInt;
import org.ionohaul.rendering.StyledLine;
import org.ionohaul.rendering.StyledLine.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How wide and how colourful a command prints. */
final class ScreenTest {
    @ParameterizedTest
    @CsvSource({"'',132,132", "100,132,100", "20,132,60", "999,80,200", "wide,90,90", "-5,90,90", "'',40,60"})
    void theVariableColumnsGoesBeforeTheTerminal(String columns, int terminal, int expected) {
        assertEquals(expected, Screen.width(columns, terminal));
    }

    private static String printed(StyledLine line, boolean isColoured) {
        StringWriter terminal = new StringWriter();
        PlainPrinter.to(new PrintWriter(terminal)).print(line, isColoured);
        return terminal.toString().strip();
    }

    @Test
    void coloursAreSetAroundTheirPiecesAndNowhereElse() {
        StyledLine line = new StyledLine(
                List.of(Piece.plain("with "), new Piece("Hare", true, OptionalInt.of(0)), Piece.plain(", perhaps")));
        assertEquals("with Hare, perhaps", printed(line, false));
        assertEquals("with \u001b[1;38;5;32mHare\u001b[0m, perhaps", printed(line, true));
        assertEquals("\u001b[1mTitle\u001b[0m", printed(StyledLine.strong("Title"), true));
    }

    @Test
    void whatOthersWroteSetsNoColour() {
        assertEquals("\\u001B[31mred", printed(StyledLine.plain("\u001b[31mred"), true));
    }

    /** There are more modes than colours that can be told apart; further ones have none. */
    @Test
    void modesBeyondTheColoursHaveNone() {
        StyledLine line = new StyledLine(List.of(new Piece("Snail", false, OptionalInt.of(6))));
        assertEquals("Snail", printed(line, true));
    }
}
