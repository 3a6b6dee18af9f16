package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the launcher asks the Java machine's compiler to keep apart is there: it passes over names that it does not know. */
final class CompiledApartTest {
    private static final Path ASKED = Path.of("src", "main", "jvm", "compiled-apart.txt");

    @Test
    void everyMethodKeptApartExists() throws IOException, ClassNotFoundException {
        List<String> lines = Files.readAllLines(ASKED);
        assertEquals("quiet", lines.get(0));
        assertTrue(lines.size() > 1);
        for (String line : lines.subList(1, lines.size())) {
            String[] words = line.split(" |::", -1);
            assertEquals("dontinline", words[0], line);
            assertTrue(
                    Arrays.stream(Class.forName(words[1]).getDeclaredMethods())
                            .anyMatch(it -> it.getName().equals(words[2])),
                    line);
        }
    }
}
