package org.ionohaul.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ionohaul.rendering.ResultFolder;

/** Thrown when results can't be written, with what to do about it. */
final class NotWritten extends Exception {
    private static final long serialVersionUID = 1;

    NotWritten(Path folder, IOException cause) {
        super("Cannot write results to " + folder + ": " + reason(cause)
                + "\n    Name another folder with --out, or make room or rights there. Earlier results are untouched.");
        initCause(cause);
    }

    /** Writes results into a folder, all or none. */
    static void write(ResultFolder folder, List<? extends ResultFolder.Entry> entries) throws NotWritten {
        try {
            folder.write(entries);
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Checks that results could be written into a folder, before time is spent on them. */
    static void probe(ResultFolder folder) throws NotWritten {
        try {
            folder.probe();
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Deletes earlier results, if there are any. */
    static void delete(ResultFolder folder) throws NotWritten {
        try {
            folder.delete();
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    private static String reason(IOException cause) {
        if (cause instanceof AccessDeniedException denied) {
            return "no right to write to " + denied.getFile();
        }
        if (cause instanceof FileAlreadyExistsException exists) {
            return exists.getFile() + " is in the way";
        }
        if (cause instanceof FileSystemException failure && failure.getReason() != null) {
            return failure.getReason() + " (" + failure.getFile() + ")";
        }
        if (cause instanceof NoSuchFileException missing) {
            return missing.getFile() + " cannot be made";
        }
        return Optional.ofNullable(cause.getMessage()).orElse(cause.toString());
    }
}
