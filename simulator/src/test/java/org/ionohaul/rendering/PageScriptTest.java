package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import org.junit.jupiter.api.Test;

final class PageScriptTest {
    @Test
    void itCannotEndTheElementItStandsIn() {
        String text = PageScript.text().toLowerCase(Locale.ROOT);
        assertFalse(text.contains("</script"));
        assertFalse(text.contains("<!--"));
    }

    /** SHA-256 in base64 has 44 characters (RFC 4648). */
    @Test
    void aPolicyNamesItByItsHash() {
        assertEquals("sha256-".length() + 44, PageScript.hash().length());
    }
}
