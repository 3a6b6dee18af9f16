package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.ionohaul.scenario.PlainText;
import org.junit.jupiter.api.Test;

/** Whatever is printed, a terminal gets nothing to obey but the ends of lines. */
final class PlainWriterTest {
    private static final String ESCAPE = "\u001b[31mred\u0007";

    private final StringWriter terminal = new StringWriter();
    private final PrintWriter writer = new PrintWriter(new PlainWriter(terminal), true);

    private String printed() {
        writer.flush();
        return terminal.toString();
    }

    @Test
    void escapesAreShownWithinALineAndAfterTheLast() {
        writer.print("one " + ESCAPE + "\ntwo " + ESCAPE + "\r\nthree " + ESCAPE);
        String shown = PlainText.of(ESCAPE);
        assertEquals("one " + shown + "\ntwo " + shown + "\r\nthree " + shown, printed());
        assertEquals(-1, printed().indexOf('\u001b'));
    }

    @Test
    void aCharacterOrAnArrayIsWrittenLikeAText() {
        writer.write('\u001b');
        writer.write(("\u001bab\nc" + ESCAPE).toCharArray(), 1, 4);
        assertEquals(PlainText.of("\u001b") + "ab\nc", printed());
    }
}
