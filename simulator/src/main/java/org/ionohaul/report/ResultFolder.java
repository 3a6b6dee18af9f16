package org.ionohaul.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of result files that appears whole or not at all.
 *
 * <p>The files are written into a hidden folder beside the final one and moved there by renaming, so that a full disk or
 * a pulled plug leaves earlier results as they were. Replacing an earlier folder takes two renames; in between, the
 * earlier results stand beside it under the name of the folder with {@code .replaced} added.
 */
public final class ResultFolder {
    private final Path folder;

    /** One file of the folder. */
    public interface Entry {
        /** Returns the file's name, without folders. */
        String fileName();

        /**
         * Writes the file.
         *
         * @param file where to, in a folder that exists
         * @throws IOException if the disk refuses
         */
        void writeTo(Path file) throws IOException;
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
     * @throws IOException if the parent cannot be made or written to, or the folder's name belongs to a file
     */
    public void probe() throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FileAlreadyExistsException(folder.toString(), null, "is a file, not a folder");
        }
        deleteTree(newScratch());
    }

    /**
     * Writes all files, replacing an earlier folder of the same name.
     *
     * @throws IOException if anything cannot be written; earlier results are untouched then
     */
    public void write(List<? extends Entry> entries) throws IOException {
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

    /** Returns the folder's absolute path. */
    public Path path() {
        return folder;
    }

    private Path newScratch() throws IOException {
        Path parent = parent();
        Files.createDirectories(parent);
        // Not a temporary folder by the JDK's own method: that one is closed to other users, and so would be the
        // results.
        for (int attempt = 0; ; attempt++) {
            try {
                return Files.createDirectory(parent.resolve("." + folder.getFileName() + ".writing-" + attempt));
            } catch (FileAlreadyExistsException e) {
                if (attempt == 99) {
                    throw e;
                }
            }
        }
    }

    private Path parent() {
        Path parent = folder.getParent();
        return parent == null ? folder : parent;
    }

    private void putInPlace(Path scratch) throws IOException {
        Path replaced = folder.resolveSibling(folder.getFileName() + ".replaced");
        deleteTree(replaced);
        boolean replaces = Files.isDirectory(folder);
        if (replaces) {
            Files.move(folder, replaced, StandardCopyOption.ATOMIC_MOVE);
        }
        try {
            Files.move(scratch, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            if (replaces) {
                Files.move(replaced, folder, StandardCopyOption.ATOMIC_MOVE);
            }
            throw e;
        }
        deleteTree(replaced);
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
