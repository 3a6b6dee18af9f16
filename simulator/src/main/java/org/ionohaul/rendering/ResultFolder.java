package org.ionohaul.rendering;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A folder of result files that appears whole or not at all.
 *
 * <p>The files are written into a hidden folder beside the final one and moved there by renaming, so that a full disk or
 * a pulled plug leaves earlier results as they were. Replacing an earlier folder takes two renames; in between, the
 * earlier results stand beside it under the name of the folder with {@code .replaced} and a number added.
 *
 * <p>Only folders of earlier results are replaced: one that holds anything else is refused.
 */
public final class ResultFolder {
    /** Every file that stands in any folder of results; nothing else is ever deleted. */
    private static final Set<String> RESULTS = Set.of(
            "card.html",
            "promise.html",
            "card.txt",
            "grid.csv",
            "grid.html",
            "ladder.svg", // of version 0.1.0
            "learn.html",
            "learn.json",
            "loss.csv",
            "net.csv",
            "net.html",
            "net.json",
            "place.html",
            "place.json",
            "report.html",
            "rare.csv",
            "runs.csv",
            "next.csv",
            "next.html",
            "next.json",
            "runs.html",
            "runs.json",
            "sky.csv",
            "sky.html",
            "story.csv",
            "story.html",
            "story.jsonl",
            "story.txt",
            "summary.json",
            "tornado.csv",
            "trials.csv",
            "vary.csv");

    private static final int MOST_ATTEMPTS = 100;

    private final Path folder;

    /** One file of the folder. */
    public interface Entry {
        /** Returns the file's name, without folders. */
        String fileName();

        /**
         * Writes what stands in the file.
         *
         * @param out where to; stays open
         * @throws IOException if the stream refuses
         */
        void writeTo(OutputStream out) throws IOException;

        /**
         * Writes the file.
         *
         * @param file where to, in a folder that exists
         * @throws IOException if the disk refuses
         */
        default void writeTo(Path file) throws IOException {
            try (OutputStream out = Files.newOutputStream(file)) {
                writeTo(out);
            }
        }
    }

    /** Returns the names of files, as they are told: one after the other. */
    public static String names(List<? extends Entry> entries) {
        return entries.stream().map(Entry::fileName).collect(Collectors.joining(", "));
    }

    /** A file of text, in UTF-8. */
    public interface Text extends Entry {
        /**
         * Writes the text.
         *
         * @param writer where to; stays open
         * @throws IOException if the writer refuses
         */
        void writeTo(Writer writer) throws IOException;

        @Override
        default void writeTo(OutputStream out) throws IOException {
            Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            writeTo(writer);
            writer.flush();
        }
    }

    /**
     * Names a folder, which need not exist yet.
     *
     * @param folder the folder; missing parents are made
     */
    public ResultFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * Checks that results could be written here, before hours of work are spent on them.
     *
     * @throws IOException if the parent cannot be made or written to, or the folder's name belongs to a file, or to a
     *     folder that holds more than earlier results
     */
    public void probe() throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FileAlreadyExistsException(folder.toString(), null, "is a file, not a folder");
        }
        refuseForeignFiles();
        deleteTree(newScratch());
    }

    /**
     * Writes all files, replacing an earlier folder of the same name.
     *
     * @throws IllegalArgumentException if an entry's name is not among those known as results
     * @throws IOException if anything cannot be written, or the earlier folder holds more than results; it is untouched
     *     then
     */
    public void write(List<? extends Entry> entries) throws IOException {
        entries.forEach(ResultFolder::requireKnown);
        Path scratch = newScratch();
        try {
            for (Entry entry : entries) {
                entry.writeTo(scratch.resolve(entry.fileName()));
            }
            putInPlace(scratch);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            deleteTree(scratch);
        }
    }

    /** Returns the folder beside this one for results that are not complete. */
    public ResultFolder partial() {
        return new ResultFolder(beside("-partial"));
    }

    /** Returns the path of something beside this folder whose name is the folder's and an ending. */
    public Path beside(String ending) {
        return folder.resolveSibling(folder.getFileName() + ending);
    }

    /**
     * Deletes the results in it and, unless something else is there, the folder; nothing if it is not there.
     *
     * @throws IOException if the disk refuses
     */
    public void delete() throws IOException {
        if (Files.isDirectory(folder)) {
            deleteResults(folder);
        }
    }

    /**
     * Deletes what a death of the program left in the midst of writing here. Only while nothing else writes here.
     *
     * @throws IOException if the disk refuses
     */
    public void deleteUnfinished() throws IOException {
        for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
            if (Files.isDirectory(scratch(attempt), LinkOption.NOFOLLOW_LINKS)) {
                deleteResults(scratch(attempt));
            }
        }
    }

    /** Returns the folder's absolute path. */
    public Path path() {
        return folder;
    }

    private Path newScratch() throws IOException {
        Files.createDirectories(parent());
        // Not a temporary folder by the JDK's own method: that one is closed to other users, and so would be the
        // results.
        for (int attempt = 0; ; attempt++) {
            try {
                return Files.createDirectory(scratch(attempt));
            } catch (FileAlreadyExistsException e) {
                if (attempt == MOST_ATTEMPTS - 1) {
                    throw e;
                }
            }
        }
    }

    private Path scratch(int attempt) {
        return parent().resolve("." + folder.getFileName() + ".writing-" + attempt);
    }

    private Path parent() {
        Path parent = folder.getParent();
        return parent == null ? folder : parent;
    }

    private static void requireKnown(Entry entry) {
        if (!RESULTS.contains(entry.fileName())) {
            throw new IllegalArgumentException("fileName must be known as a result: " + entry.fileName());
        }
    }

    private void refuseForeignFiles() throws IOException {
        if (Files.isSymbolicLink(folder)) {
            throw new FileSystemException(
                    folder.toString(), null, "is a link, and what it leads to is not replaced by results");
        }
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            Path foreign =
                    files.filter(file -> !isResult(file)).sorted().findFirst().orElse(folder);
            if (!foreign.equals(folder)) {
                throw new FileSystemException(
                        foreign.toString(),
                        null,
                        "the folder would be replaced, but holds something that is no result of this program");
            }
        }
    }

    private static boolean isResult(Path file) {
        return RESULTS.contains(String.valueOf(file.getFileName()))
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    private void putInPlace(Path scratch) throws IOException {
        refuseForeignFiles();
        if (!Files.exists(folder)) {
            Files.move(scratch, folder, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path replaced = freeSibling();
        Files.move(folder, replaced, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(scratch, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(replaced, folder, StandardCopyOption.ATOMIC_MOVE);
            throw e;
        }
        deleteResults(replaced);
    }

    private Path freeSibling() throws IOException {
        return IntStream.range(0, MOST_ATTEMPTS)
                .mapToObj(attempt -> folder.resolveSibling(folder.getFileName() + ".replaced-" + attempt))
                .filter(it -> !Files.exists(it, LinkOption.NOFOLLOW_LINKS))
                .findFirst()
                .orElseThrow(() -> new FileAlreadyExistsException(folder + ".replaced-0"));
    }

    /** Deletes what is known as a result; whatever someone put beside it since it was looked at stays, with the folder. */
    private static void deleteResults(Path replaced) throws IOException {
        try {
            for (String name : RESULTS) {
                Files.deleteIfExists(replaced.resolve(name));
            }
            Files.delete(replaced);
        } catch (DirectoryNotEmptyException e) {
            return;
        }
    }

    private static void deleteTree(Path root) throws IOException {
        try (Stream<Path> tree = Files.walk(root)) {
            for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (NoSuchFileException | DirectoryNotEmptyException e) {
            // Gone already, or someone keeps a file open in it: neither harms the results.
            return;
        }
    }
}
