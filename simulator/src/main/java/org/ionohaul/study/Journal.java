package org.ionohaul.study;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.CRC32C;

/**
 * Finished blocks of a run, appended to a file one after the other as they come, so that the run can go on after any
 * death of the program or the machine.
 *
 * <p>Each record is its length (4 bytes), what stands in it, and a check sum of both (CRC-32C of RFC 3720, 4 bytes). What
 * is torn or damaged at the end is dropped when the file is opened again, and everything behind it. The first record says
 * what the run is: a fingerprint of everything that its results depend on. The file is for this version of the program
 * alone. While it is open, no other run may use it.
 *
 * <p>A nameless journal is a temporary file without a name, made when it is first written to; it goes with the program.
 */
public final class Journal implements Closeable {
    private static final String FORMAT = "ionohaul journal 1 ";

    private static final int AROUND_A_RECORD = 2 * Integer.BYTES;

    /** How many bytes are checked at a time. */
    private static final int PIECE = 1 << 16;

    private final Optional<Path> name;
    private Optional<FileChannel> channel;
    private final List<Entry> entries = new ArrayList<>();
    private volatile boolean isForced = true;

    /**
     * Where a block stands.
     *
     * @param section what the block belongs to
     * @param start its first byte in the file
     * @param length how many bytes it has
     */
    record Entry(String section, long start, int length) {}

    private Journal(Optional<Path> name, Optional<FileChannel> channel) {
        this.name = name;
        this.channel = channel;
    }

    /** Returns a journal that keeps nothing beyond this run. */
    static Journal nameless() {
        return new Journal(Optional.empty(), Optional.empty());
    }

    /**
     * Begins a journal in place of any that is there.
     *
     * @param file where it lies; missing folders are made
     * @param fingerprint everything that the results depend on
     * @throws IOException if the disk refuses, or another run uses the file
     */
    public static Journal begin(Path file, String fingerprint) throws IOException {
        Files.createDirectories(file.toAbsolutePath().resolveSibling(""));
        Journal journal = new Journal(Optional.of(file), Optional.of(locked(file, StandardOpenOption.CREATE)));
        try {
            journal.opened().truncate(0);
            journal.write(ByteBuffer.wrap(head(fingerprint)));
            return journal;
        } catch (IOException e) {
            journal.close();
            throw e;
        }
    }

    /**
     * Opens a journal to go on with it.
     *
     * @param file where it lies
     * @param fingerprint everything that the results depend on, as it is now
     * @return the journal; empty if there is none, or it is of another run or version
     * @throws IOException if it can't be read, or another run uses it
     */
    public static Optional<Journal> resume(Path file, String fingerprint) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        Journal journal = new Journal(Optional.of(file), Optional.of(locked(file)));
        boolean isOurs = false;
        try {
            isOurs = journal.recover(ByteBuffer.wrap(head(fingerprint)));
        } finally {
            if (!isOurs) {
                journal.close();
            }
        }
        return isOurs ? Optional.of(journal) : Optional.empty();
    }

    /** Returns whether blocks outlive the program, so that each should be written. */
    boolean isKept() {
        return name.isPresent();
    }

    /** Returns where it lies, for people. */
    String place() {
        return name.map(Path::toString).orElseGet(() -> System.getProperty("java.io.tmpdir"));
    }

    /** Returns the blocks of a section, in the order written. */
    List<Entry> entries(String section) {
        return entries.stream().filter(it -> it.section().equals(section)).toList();
    }

    /**
     * Appends a block.
     *
     * @throws IOException if the disk refuses; the journal is as it was then
     */
    Entry append(String section, ByteBuffer block) throws IOException {
        byte[] head = section.getBytes(StandardCharsets.UTF_8);
        ByteBuffer record = ByteBuffer.allocate(Short.BYTES + head.length + block.remaining())
                .putShort((short) head.length)
                .put(head)
                .put(block)
                .flip();
        long start = write(record);
        Entry entry = entry(start, record);
        entries.add(entry);
        return entry;
    }

    /** Returns a block as it stands in the file. */
    ByteBuffer map(Entry entry) throws IOException {
        return opened().map(FileChannel.MapMode.READ_ONLY, entry.start(), entry.length());
    }

    /** Returns a copy of a block. */
    ByteBuffer copy(Entry entry) throws IOException {
        return read(opened(), entry.start(), entry.length());
    }

    /** Sees that what was appended outlives a power cut, if the journal has a name; any thread may ask. */
    void force() throws IOException {
        if (isKept() && !isForced) {
            isForced = true;
            opened().force(false);
        }
    }

    /** Closes the file; what is in it stays. */
    @Override
    public void close() throws IOException {
        if (channel.isPresent()) {
            channel.get().close();
        }
    }

    /** Closes the file and deletes it: the run is over. */
    public void delete() throws IOException {
        close();
        if (name.isPresent()) {
            Files.deleteIfExists(name.get());
        }
    }

    /** Closes the file, and deletes it if no block is in it. */
    public void closeOrForget() throws IOException {
        if (entries.isEmpty()) {
            delete();
        } else {
            close();
        }
    }

    private static byte[] head(String fingerprint) {
        return (FORMAT + fingerprint).getBytes(StandardCharsets.UTF_8);
    }

    private static FileChannel locked(Path file, StandardOpenOption... more) throws IOException {
        List<StandardOpenOption> options = new ArrayList<>(List.of(more));
        options.addAll(List.of(StandardOpenOption.READ, StandardOpenOption.WRITE));
        FileChannel channel = FileChannel.open(file, options.toArray(StandardOpenOption[]::new));
        boolean isLocked = false;
        try {
            FileLock lock = channel.tryLock();
            isLocked = lock != null;
        } catch (OverlappingFileLockException e) {
            isLocked = false;
        } finally {
            if (!isLocked) {
                channel.close();
            }
        }
        if (!isLocked) {
            throw new FileSystemException(file.toString(), null, "another run is writing to it; wait for its end");
        }
        return channel;
    }

    /** Reads what is whole, drops the rest, and returns whether the journal has the head asked for. */
    private boolean recover(ByteBuffer head) throws IOException {
        FileChannel file = opened();
        OptionalInt length = lengthOfWhole(file, 0);
        if (length.isEmpty() || !read(file, Integer.BYTES, length.getAsInt()).equals(head)) {
            return false;
        }
        long end = 0;
        while (length.isPresent()) {
            end += AROUND_A_RECORD + length.getAsInt();
            length = lengthOfWhole(file, end);
            if (length.isPresent()) {
                entries.add(entry(end, read(file, end + Integer.BYTES, length.getAsInt())));
            }
        }
        file.truncate(end);
        return true;
    }

    /** Returns the length of the record that begins at a place; empty if it is not whole. */
    private static OptionalInt lengthOfWhole(FileChannel file, long start) throws IOException {
        long left = file.size() - start - AROUND_A_RECORD;
        if (left < 0) {
            return OptionalInt.empty();
        }
        int length = read(file, start, Integer.BYTES).getInt();
        if (length < 0 || length > left) {
            return OptionalInt.empty();
        }
        // In pieces: a damaged length may claim more than fits into memory.
        CRC32C sum = new CRC32C();
        long end = start + Integer.BYTES + length;
        for (long at = start; at < end; at += PIECE) {
            sum.update(read(file, at, (int) Math.min(PIECE, end - at)));
        }
        boolean isWhole = read(file, end, Integer.BYTES).getInt() == (int) sum.getValue();
        return isWhole ? OptionalInt.of(length) : OptionalInt.empty();
    }

    private static ByteBuffer read(FileChannel file, long start, int length) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(length);
        while (bytes.hasRemaining()) {
            if (file.read(bytes, start + bytes.position()) < 0) {
                throw new IOException("ends too early");
            }
        }
        return bytes.flip();
    }

    private static int checkSum(ByteBuffer record) {
        CRC32C sum = new CRC32C();
        sum.update(ByteBuffer.allocate(Integer.BYTES).putInt(record.remaining()).flip());
        sum.update(record.duplicate());
        return (int) sum.getValue();
    }

    /** Returns where the block of a record stands that begins at a place. */
    private static Entry entry(long start, ByteBuffer record) {
        int head = record.getShort(0);
        byte[] section = new byte[head];
        record.get(Short.BYTES, section);
        int before = Short.BYTES + head;
        return new Entry(
                new String(section, StandardCharsets.UTF_8),
                start + Integer.BYTES + before,
                record.remaining() - before);
    }

    /** Writes a record whole and returns where it begins, or leaves the file as it was. */
    private long write(ByteBuffer record) throws IOException {
        FileChannel file = opened();
        long start = file.size();
        ByteBuffer bytes = ByteBuffer.allocate(AROUND_A_RECORD + record.remaining())
                .putInt(record.remaining())
                .put(record.duplicate())
                .putInt(checkSum(record))
                .flip();
        try {
            while (bytes.hasRemaining()) {
                file.write(bytes, start + bytes.position());
            }
        } catch (IOException e) {
            file.truncate(start);
            throw e;
        }
        isForced = false;
        return start;
    }

    private FileChannel opened() throws IOException {
        if (channel.isEmpty()) {
            Path path = Files.createTempFile("ionohaul", ".rows");
            channel = Optional.of(FileChannel.open(
                    path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE));
        }
        return channel.get();
    }
}
