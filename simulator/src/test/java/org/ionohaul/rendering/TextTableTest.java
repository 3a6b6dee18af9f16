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
}
