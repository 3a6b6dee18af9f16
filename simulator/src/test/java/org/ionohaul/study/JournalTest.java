package org.ionohaul.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is whole in a journal is found again, whatever happened to the rest. */
final class JournalTest {
    private static final List<String> BLOCKS = List.of("first block", "second", "the third and last");

    @TempDir
    private Path folder = Path.of("");

    private Path file() {
        return folder.resolve("deep/run.journal");
    }

    /** Writes the blocks and returns the file's size after each of them, that of the head alone first. */
    private long[] written() throws IOException {
        long[] sizes = new long[BLOCKS.size() + 1];
        try (Journal journal = Journal.begin(file(), "print")) {
            sizes[0] = Files.size(file());
            for (int i = 0; i < BLOCKS.size(); i++) {
                journal.append("rows", bytes(BLOCKS.get(i)));
                sizes[i + 1] = Files.size(file());
            }
        }
        return sizes;
    }

    private List<String> found() throws IOException {
        try (Journal journal = Journal.resume(file(), "print").orElseThrow()) {
            return texts(journal, "rows");
        }
    }

    private static List<String> texts(Journal journal, String section) throws IOException {
        java.util.ArrayList<String> texts = new java.util.ArrayList<>();
        for (Journal.Entry entry : journal.entries(section)) {
            String copied = StandardCharsets.UTF_8.decode(journal.copy(entry)).toString();
            assertEquals(
                    copied, StandardCharsets.UTF_8.decode(journal.map(entry)).toString());
            texts.add(copied);
        }
        return texts;
    }

    private static ByteBuffer bytes(String text) {
        return ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void whatWasWrittenIsFoundAgainByItsSection() throws IOException {
        try (Journal journal = Journal.begin(file(), "print")) {
            journal.append("a", bytes("1"));
            journal.append("b", bytes("2"));
            journal.append("a", bytes("3"));
        }
        try (Journal journal = Journal.resume(file(), "print").orElseThrow()) {
            assertEquals(List.of("1", "3"), texts(journal, "a"));
            journal.append("b", bytes("4"));
            assertEquals(List.of("2", "4"), texts(journal, "b"));
        }
    }

    @Test
    void tornAtAnyByteItHoldsTheBlocksThatAreWholeAndGoesOnBehindThem() throws IOException {
        long[] sizes = written();
        byte[] whole = Files.readAllBytes(file());
        for (int length = (int) sizes[0]; length < whole.length; length++) {
            Files.write(file(), Arrays.copyOf(whole, length));
            int expected = 0;
            while (expected < BLOCKS.size() && sizes[expected + 1] <= length) {
                expected++;
            }
            assertEquals(BLOCKS.subList(0, expected), found(), "torn at " + length);
            assertEquals(sizes[expected], Files.size(file()), "what is torn is cut off");
            try (Journal journal = Journal.resume(file(), "print").orElseThrow()) {
                journal.append("rows", bytes("more"));
            }
            assertEquals("more", found().get(expected));
        }
    }

    @Test
    void aDamagedByteEndsItBeforeItsBlock() throws IOException {
        long[] sizes = written();
        byte[] whole = Files.readAllBytes(file());
        for (int place = (int) sizes[1]; place < sizes[2]; place++) {
            byte[] damaged = whole.clone();
            damaged[place] ^= 0x10;
            Files.write(file(), damaged);
            assertEquals(BLOCKS.subList(0, 1), found(), "damaged at " + place);
        }
    }

    @Test
    void whatAPowerCutLeavesBehindTheLastBlockIsDropped() throws IOException {
        long[] sizes = written();
        byte[] whole = Files.readAllBytes(file());
        for (int added : List.of(1, 8, 5000)) {
            Files.write(file(), Arrays.copyOf(whole, whole.length + added));
            assertEquals(BLOCKS, found(), added + " bytes of nothing");
            assertEquals(sizes[BLOCKS.size()], Files.size(file()));
        }
    }

    @Test
    void aBlockLongerThanOnePieceIsCheckedToItsEnd() throws IOException {
        String large = "x".repeat(200_000);
        try (Journal journal = Journal.begin(file(), "print")) {
            journal.append("rows", bytes(large));
        }
        assertEquals(List.of(large), found());
        byte[] damaged = Files.readAllBytes(file());
        damaged[damaged.length - 100] ^= 1;
        Files.write(file(), damaged);
        assertEquals(List.of(), found());
    }

    @Test
    void aJournalOfAnotherRunOrNoneIsNotGoneOnWith() throws IOException {
        assertEquals(Optional.empty(), Journal.resume(file(), "print"));
        written();
        assertEquals(Optional.empty(), Journal.resume(file(), "another print"));
        assertEquals(BLOCKS, found(), "and it is untouched");
        Files.writeString(file(), "someone's notes, and by no means a journal");
        assertEquals(Optional.empty(), Journal.resume(file(), "print"));
        assertEquals("someone's notes, and by no means a journal", Files.readString(file()));
    }

    @Test
    void twoRunsCanNotUseOneJournal() throws IOException {
        try (Journal journal = Journal.begin(file(), "print")) {
            journal.append("rows", bytes("mine"));
            FileSystemException refused = assertThrows(FileSystemException.class, () -> Journal.begin(file(), "print"));
            assertTrue(String.valueOf(refused.getReason()).contains("another run"), refused::toString);
            assertThrows(FileSystemException.class, () -> Journal.resume(file(), "print"));
        }
        assertEquals(List.of("mine"), found());
    }

    @Test
    void aJournalIsGoneWhenItsRunIsOver() throws IOException {
        Journal journal = Journal.begin(file(), "print");
        journal.delete();
        assertEquals(Optional.empty(), Journal.resume(file(), "print"));
    }

    @Test
    void aJournalInWhichNothingStandsIsForgottenAndAnotherKept() throws IOException {
        Journal empty = Journal.begin(file(), "print");
        empty.closeOrForget();
        assertFalse(Files.exists(file()));
        Journal full = Journal.begin(file(), "print");
        assertTrue(full.isKept());
        assertEquals(file().toString(), full.place());
        RowStore.in(full, "study")
                .append(List.of(
                        List.of(TrialRow.of(0, InventedStudy.delivered(9)).packed())));
        full.closeOrForget();
        assertTrue(Files.exists(file()));
        assertFalse(Journal.nameless().isKept());
        assertEquals(System.getProperty("java.io.tmpdir"), Journal.nameless().place());
    }
}
