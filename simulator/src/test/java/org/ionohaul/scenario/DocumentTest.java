package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tomlj.Toml;

final class DocumentTest {
    /** These are not given to the parser of TOML, since it would refuse them all. */
    @ParameterizedTest
    @ValueSource(strings = {"9 dB", "-3 dB", "+4.5 kB", "25 min", "1 e", "0 x", "12 inf", "1979 T"})
    void aNumberWithAUnitIsNoToml(String text) {
        assertTrue(Toml.parse("value = " + text).hasErrors(), text);
        assertEquals(text, Document.valueOf(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"9", "-3.5", "1e6", "true", "inf", "\"9 dB\"", "1979-05-27 07:32:00", "0x1f", "9 # dB"})
    void whatIsTomlIsReadAsToml(String text) {
        assertEquals(Toml.parse("value = " + text).get("value"), Document.valueOf(text));
    }
}
