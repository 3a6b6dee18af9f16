package org.ionohaul.study;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.ionohaul.scenario.Scenario;

/**
 * What was done of a study when it was interrupted, kept so that it can go on to the same bytes as one that was never
 * interrupted.
 *
 * <p>The file is not for people nor for other programs: it changes with the program. A fingerprint of everything that
 * results depend on guards against going on with rows of another study.
 *
 * @param study the study itself
 * @param sizes the trials of other sizes; none done if the study itself is not complete
 */
public record Checkpoint(StudyResult study, StudyResult sizes) {
    private static final String FORMAT = "ionohaul rows 3";

    /** Returns that nothing is done yet. */
    public static Checkpoint nothing(Scenario scenario, Scenario ofSizes) {
        return new Checkpoint(StudyResult.nothing(scenario), StudyResult.nothing(ofSizes));
    }

    /**
     * Writes what was done.
     *
     * @param fingerprint all that results depend on but for the numbers of trials
     * @throws IOException if the stream refuses
     */
    public void write(String fingerprint, OutputStream stream) throws IOException {
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(new GZIPOutputStream(stream)))) {
            out.writeUTF(FORMAT);
            out.writeUTF(fingerprint);
            write(study, out);
            write(sizes, out);
        }
    }

    /**
     * Reads what was done.
     *
     * @param scenario the scenario as it is now
     * @param ofSizes the scenario of other sizes as it is now
     * @param fingerprint their fingerprint as it is now
     * @return what was done; empty if the rows are of another study or another version of the program
     * @throws IOException if the stream breaks off or is no such file
     */
    public static Optional<Checkpoint> read(Scenario scenario, Scenario ofSizes, String fingerprint, InputStream stream)
            throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(new GZIPInputStream(stream)))) {
            if (!in.readUTF().equals(FORMAT) || !in.readUTF().equals(fingerprint)) {
                return Optional.empty();
            }
            return Optional.of(new Checkpoint(read(scenario, in), read(ofSizes, in)));
        }
    }

    private static void write(StudyResult result, DataOutputStream out) throws IOException {
        out.writeInt(result.trialsDone());
        for (int trial = 0; trial < result.trialsDone(); trial++) {
            List<byte[]> rows = result.packed(trial);
            out.writeInt(rows.size());
            for (byte[] row : rows) {
                out.writeInt(row.length);
                out.write(row);
            }
        }
    }

    private static StudyResult read(Scenario scenario, DataInputStream in) throws IOException {
        int trials = in.readInt();
        RowStore rows = RowStore.of(trials, trial -> rows(in));
        return StudyResult.of(scenario, Math.max(scenario.trials(), trials), rows);
    }

    private static List<byte[]> rows(DataInputStream in) throws IOException {
        List<byte[]> rows = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            rows.add(in.readNBytes(in.readInt()));
        }
        return rows;
    }
}
