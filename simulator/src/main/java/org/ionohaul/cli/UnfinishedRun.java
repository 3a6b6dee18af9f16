package org.ionohaul.cli;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.study.Journal;
import org.ionohaul.study.LineStore;
import org.ionohaul.study.RowStore;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * What is done of a run that is not complete: a journal beside the folder of results and, after an interruption, partial
 * results in a folder of their own. Both go when the run is complete; earlier results stay until then.
 */
final class UnfinishedRun implements Closeable {
    private static final String JOURNAL = ".journal";

    private final ResultFolder folder;
    private final Journal journal;

    private UnfinishedRun(ResultFolder folder, Journal journal) {
        this.folder = folder;
        this.journal = journal;
    }

    /**
     * Begins a run, or goes on with one.
     *
     * @param folder where the complete results will lie
     * @param fingerprint everything that they depend on
     * @param isResumed whether to go on
     * @param command who asks
     */
    static UnfinishedRun open(ResultFolder folder, String fingerprint, boolean isResumed, CommandLine command)
            throws NotWritten {
        NotWritten.probe(folder);
        NotWritten.probe(folder.partial());
        try {
            if (!isResumed) {
                return new UnfinishedRun(folder, Journal.begin(folder.beside(JOURNAL), fingerprint));
            }
            Optional<Journal> found = Journal.resume(folder.beside(JOURNAL), fingerprint);
            return new UnfinishedRun(
                    folder,
                    found.orElseThrow(() -> new ParameterException(
                            command,
                            "--resume: beside " + folder.path()
                                    + " there is nothing unfinished of this command, these files, changes and seed and"
                                    + " this version of the program; start it anew without --resume.")));
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Returns what is done of a part of the run; what is added is kept. */
    RowStore rows(String part) throws NotWritten {
        try {
            return RowStore.in(journal, part);
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Returns what is done of a part of the run that comes to lines; what is added is kept. */
    LineStore lines(String part) throws NotWritten {
        try {
            return LineStore.in(journal, part);
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    /** Returns where results go that are not complete. */
    ResultFolder partial() {
        return folder.partial();
    }

    /** Says that the run is over: nothing of it is left to go on with. */
    void finish() throws NotWritten {
        try {
            folder.deleteUnfinished();
            folder.partial().deleteUnfinished();
            folder.partial().delete();
            journal.delete();
        } catch (IOException e) {
            throw new NotWritten(folder.path(), e);
        }
    }

    @Override
    public void close() {
        try {
            journal.closeOrForget();
        } catch (IOException e) {
            // What was written is checked when it is read: a file that can't be closed harms nothing.
            return;
        }
    }
}
