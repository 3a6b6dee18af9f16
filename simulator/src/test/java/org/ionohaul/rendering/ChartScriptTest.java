package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;

final class ChartScriptTest {
    @Test
    void aScriptCannotEndTheElementItStandsIn() {
        assertEquals(
                "a = '\\x3c/script>' + \"\\x3c/SCRIPT >\" + /\\x3c!--/; b < c",
                ChartScript.inlined("a = '</script>' + \"</SCRIPT >\" + /<!--/; b < c"));
        String text = ChartScript.text();
        assertFalse(text.toLowerCase(Locale.ROOT).contains("</script"));
        assertFalse(text.contains("<!--"));
    }

    @Test
    void licencesGoWithTheLibrary() {
        assertAll(
                () -> assertTrue(ChartScript.text().contains("Licensed to the Apache Software Foundation")),
                () -> assertTrue(ChartScript.licences().contains("Apache ECharts\nCopyright 2017-2022")),
                () -> assertTrue(ChartScript.licences().contains("Apache License")),
                () -> assertTrue(ChartScript.licences().contains("Mike Bostock")),
                () -> assertTrue(ChartScript.licences().contains("Baidu Inc.")));
    }
}
