package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ResultFolderTest {
    @TempDir
    private Path parent = Path.of("");

    private record Text(String fileName, String text) implements ResultFolder.Entry {
        @Override
        public void writeTo(Path file) throws IOException {
            Files.writeString(file, text);
        }
    }

    private record FullDisk(String fileName) implements ResultFolder.Entry {
        @Override
        public void writeTo(Path file) throws IOException {
            Files.writeString(file, "half a f");
            throw new IOException("No space left on device");
        }
    }

    @Test
    void allFilesAppearTogetherAndNothingElseDoes() throws IOException {
        new ResultFolder(parent.resolve("a/b")).write(List.of(new Text("x", "1"), new Text("y", "2")));
        assertEquals(List.of("b"), names(parent.resolve("a")));
        assertEquals(List.of("x", "y"), names(parent.resolve("a/b")));
    }

    @Test
    void newResultsReplaceEarlierOnesWholly() throws IOException {
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        folder.write(List.of(new Text("x", "1"), new Text("old", "1")));
        folder.write(List.of(new Text("x", "2")));
        assertEquals(List.of("b"), names(parent));
        assertEquals(List.of("x"), names(parent.resolve("b")));
        assertEquals("2", Files.readString(parent.resolve("b/x")));
    }

    @Test
    void aFullDiskLeavesEarlierResultsUntouchedAndNoRubbish() throws IOException {
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        folder.write(List.of(new Text("x", "1")));
        assertThrows(IOException.class, () -> folder.write(List.of(new Text("x", "2"), new FullDisk("y"))));
        assertEquals(List.of("b"), names(parent));
        assertEquals("1", Files.readString(parent.resolve("b/x")));
    }

    @Test
    void aFileInTheWayIsFoundBeforeWorkBegins() throws IOException {
        Files.writeString(parent.resolve("b"), "someone's notes");
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        assertThrows(FileAlreadyExistsException.class, folder::probe);
        assertEquals("someone's notes", Files.readString(parent.resolve("b")));
    }

    @Test
    void lookingWhetherItWouldWorkLeavesNothingBehind() throws IOException {
        new ResultFolder(parent.resolve("b")).probe();
        assertEquals(List.of(), names(parent));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.map(it -> String.valueOf(it.getFileName())).sorted().toList();
        }
    }
}
