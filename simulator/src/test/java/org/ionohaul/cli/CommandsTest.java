package org.ionohaul.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

final class CommandsTest {
    @Test
    void everyCommandNeedsItselfAlone() {
        assertAll(Commands.ALL.stream()
                .filter(it -> it != CommandLine.HelpCommand.class)
                .map(it -> () -> assertEquals(
                        List.of(it),
                        Commands.askedBy(it.getAnnotation(Command.class).name(), "--help"))));
    }

    @Test
    void helpAndWhatIsNoCommandNeedAll() {
        assertAll(
                () -> assertEquals(Commands.ALL, Commands.askedBy()),
                () -> assertEquals(Commands.ALL, Commands.askedBy("help", "check")),
                () -> assertEquals(Commands.ALL, Commands.askedBy("--help")),
                () -> assertEquals(Commands.ALL, Commands.askedBy("chek", "check")));
    }

    @Test
    void theClassesForTheNextStartsAreThoseOfCommandsThatRun(@TempDir Path folder) {
        PrintStream terminal = System.out;
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        System.setOut(new PrintStream(told, true, StandardCharsets.UTF_8));
        try {
            Rehearsal.main(new String[] {
                "../scenarios/river-watch.toml", folder.resolve("study").toString()
            });
        } finally {
            System.setOut(terminal);
        }
        assertEquals(
                2,
                told.toString(StandardCharsets.UTF_8)
                        .lines()
                        .filter(it -> it.contains(": in order.") || it.startsWith("Written to "))
                        .count(),
                told::toString);
    }
}
