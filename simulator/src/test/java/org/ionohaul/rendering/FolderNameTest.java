package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever things are called, their folder of results lies where results are put, on every system. */
final class FolderNameTest {
    @Test
    @DisplayName("ordinary names stand as they are, joined by hyphens")
    void ordinaryNamesStand() {
        assertEquals(
                "river-watch-41-trace-photo-upload-5",
                FolderName.of("river-watch", 41L, "trace", "photo", "upload", 5));
        assertEquals("Übung_2.1-7", FolderName.of("Übung_2.1", 7));
    }

    @ParameterizedTest
    @DisplayName("a name with folders, drives, devices, control characters or without end stays one step down")
    @ValueSource(
            strings = {
                "../../../../x",
                "..",
                ".",
                ".hidden",
                "/etc/x",
                "a/b/c",
                "C:\\x",
                "con",
                "NUL.txt",
                "lpt1",
                "x.",
                "x ",
                "a*?<>|\"b",
                "\u001b[2J",
                "\u202Egpj",
                "\u0000",
                "~",
                "\ud83d\ude00"
            })
    void hostileNamesStayOneStepDown(String name) {
        String folder = FolderName.of(name);
        Path results = Path.of("results").toAbsolutePath();
        assertEquals(results, results.resolve(folder).normalize().getParent());
        assertTrue(folder.matches("[\\p{L}\\p{N}_-][\\p{L}\\p{N}._~-]*[\\p{L}\\p{N}_]"), folder);
        assertFalse(folder.matches("(?i)(con|nul|lpt1)(\\..*)?"), folder);
    }

    @Test
    @DisplayName("a name is at most 255 bytes long with what is added to it for a moment, whatever its letters")
    void longNamesAreCut() {
        for (String letter : new String[] {"x", "Ü", "漢", "𝔸"}) {
            String folder = "." + FolderName.of(letter.repeat(4000)) + ".replaced-99";
            assertTrue(folder.getBytes(StandardCharsets.UTF_8).length <= 255, folder);
        }
    }

    @Test
    @DisplayName("different names that had to be changed have different folders")
    void changedNamesStayApart() {
        assertNotEquals(FolderName.of("a/b"), FolderName.of("a:b"));
        assertNotEquals(FolderName.of("a/b"), FolderName.of("a_b"));
        assertNotEquals(FolderName.of("x".repeat(100)), FolderName.of("x".repeat(101)));
        assertEquals(FolderName.of("a/b"), FolderName.of("a/b"));
    }
}
