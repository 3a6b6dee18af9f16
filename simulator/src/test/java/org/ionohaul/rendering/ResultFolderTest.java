package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ResultFolderTest {
    @TempDir
    private Path parent = Path.of("");

    private record Text(String fileName, String text) implements ResultFolder.Text {
        @Override
        public void writeTo(Writer writer) throws IOException {
            writer.write(text);
        }
    }

    private record FullDisk(String fileName) implements ResultFolder.Entry {
        @Override
        public void writeTo(OutputStream out) throws IOException {
            out.write("half a f".getBytes(StandardCharsets.UTF_8));
            throw new IOException("No space left on device");
        }
    }

    @Test
    void allFilesAppearTogetherAndNothingElseDoes() throws IOException {
        new ResultFolder(parent.resolve("a/b")).write(List.of(new Text("sky.csv", "1"), new Text("sky.html", "2")));
        assertEquals(List.of("b"), names(parent.resolve("a")));
        assertEquals(List.of("sky.csv", "sky.html"), names(parent.resolve("a/b")));
    }

    @Test
    void newResultsReplaceEarlierOnesWholly() throws IOException {
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        folder.write(List.of(new Text("sky.csv", "1"), new Text("vary.csv", "1")));
        folder.write(List.of(new Text("sky.csv", "2")));
        assertEquals(List.of("b"), names(parent));
        assertEquals(List.of("sky.csv"), names(parent.resolve("b")));
        assertEquals("2", Files.readString(parent.resolve("b/sky.csv")));
    }

    @Test
    void aFullDiskLeavesEarlierResultsUntouchedAndNoRubbish() throws IOException {
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        folder.write(List.of(new Text("sky.csv", "1")));
        assertThrows(
                IOException.class, () -> folder.write(List.of(new Text("sky.csv", "2"), new FullDisk("sky.html"))));
        assertEquals(List.of("b"), names(parent));
        assertEquals("1", Files.readString(parent.resolve("b/sky.csv")));
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

    @Test
    void aFolderWithSomeoneElsesFilesIsRefusedAndUntouched() throws IOException {
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        folder.write(List.of(new Text("sky.csv", "1")));
        Files.writeString(parent.resolve("b/notes.txt"), "someone's notes");
        assertThrows(FileSystemException.class, folder::probe);
        assertThrows(FileSystemException.class, () -> folder.write(List.of(new Text("sky.csv", "2"))));
        assertEquals(List.of("b"), names(parent));
        assertEquals("1", Files.readString(parent.resolve("b/sky.csv")));
        assertEquals("someone's notes", Files.readString(parent.resolve("b/notes.txt")));
    }

    @Test
    void aFolderWithFoldersIsRefusedWhateverTheyAreCalled() throws IOException {
        Files.createDirectories(parent.resolve("b/sky.csv/deeper"));
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        assertThrows(FileSystemException.class, () -> folder.write(List.of(new Text("sky.csv", "1"))));
        assertEquals(List.of("deeper"), names(parent.resolve("b/sky.csv")));
    }

    @Test
    void siblingsOfAnyNameStay() throws IOException {
        for (String sibling : List.of("b.replaced", "b.replaced-0", ".b.writing-0")) {
            Files.writeString(Files.createDirectory(parent.resolve(sibling)).resolve("sky.csv"), "kept");
        }
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        folder.write(List.of(new Text("sky.csv", "1")));
        folder.write(List.of(new Text("sky.csv", "2")));
        assertEquals(List.of(".b.writing-0", "b", "b.replaced", "b.replaced-0"), names(parent));
        assertEquals("kept", Files.readString(parent.resolve("b.replaced/sky.csv")));
        assertEquals("kept", Files.readString(parent.resolve("b.replaced-0/sky.csv")));
    }

    @Test
    void whatADeathLeftIsDeletedWhenAskedForAndNothingElse() throws IOException {
        for (String sibling : List.of(".b.writing-0", ".b.writing-1", ".c.writing-0")) {
            Files.writeString(Files.createDirectory(parent.resolve(sibling)).resolve("sky.csv"), "half a f");
        }
        Files.writeString(parent.resolve(".b.writing-1/novel.txt"), "kept");
        new ResultFolder(parent.resolve("b")).deleteUnfinished();
        assertEquals(List.of(".b.writing-1", ".c.writing-0"), names(parent));
        assertEquals(List.of("novel.txt"), names(parent.resolve(".b.writing-1")));
    }

    @Test
    void aResultThatWouldNotBeKnownLaterIsNotWritten() throws IOException {
        ResultFolder folder = new ResultFolder(parent.resolve("b"));
        assertThrows(IllegalArgumentException.class, () -> folder.write(List.of(new Text("new.csv", "1"))));
        assertEquals(List.of(), names(parent));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.map(it -> String.valueOf(it.getFileName())).sorted().toList();
        }
    }
}
