package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TextTableTest {
    private static final Table TABLE = new Table(
            "",
            List.of(Cell.of("mode"), new Cell("by", "noon"), Cell.of("bytes")),
            List.of(List.of(Cell.of("long name"), new Cell("4:20", "4:00-5:00"), Cell.of("6"))));

    @Test
    void namesStandLeftAndFiguresRightWithSmallPrintBelow() {
        assertEquals(
                List.of(
                        "  mode              by  bytes",
                        "                  noon",
                        "  ---------------------------",
                        "  long name       4:20      6",
                        "             4:00-5:00"),
                new TextTable(TABLE).lines(80));
    }

    @Test
    void columnsThatDoNotFitComeBelow() {
        assertEquals(
                List.of(
                        "  mode              by",
                        "                  noon",
                        "  --------------------",
                        "  long name       4:20",
                        "             4:00-5:00",
                        "",
                        "  mode       bytes",
                        "  ----------------",
                        "  long name      6"),
                new TextTable(TABLE).lines(28));
    }

    @Test
    void aRangeWithUnitsAtBothEndsIsBrokenWhereColumnsWouldNotFitOtherwise() {
        TextTable table = new TextTable(new Table(
                "",
                List.of(Cell.of("mode"), Cell.of("by"), Cell.of("level")),
                List.of(List.of(
                        Cell.of("long name"),
                        new Cell("9 min 54 s", "9 min 41 s to 10 min 5 s"),
                        new Cell("12 dB", "6.9 to 17.1 dB")))));
        assertEquals(
                List.of(
                        "  mode                             by           level",
                        "  ---------------------------------------------------",
                        "  long name                9 min 54 s           12 dB",
                        "             9 min 41 s to 10 min 5 s  6.9 to 17.1 dB"),
                table.lines(53));
        assertEquals(
                List.of(
                        "  mode                  by           level",
                        "  ----------------------------------------",
                        "  long name     9 min 54 s           12 dB",
                        "                9 min 41 s  6.9 to 17.1 dB",
                        "             to 10 min 5 s"),
                table.lines(52));
    }
}
