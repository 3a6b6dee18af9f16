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
 * The rows of an interrupted study, kept so that it can go on to the same bytes as one that was never interrupted.
 *
 * <p>Not for people nor for other programs: it changes with the program. A fingerprint of everything that results depend
 * on guards against going on with rows of another study.
 */
public final class Checkpoint {
    private static final String FORMAT = "ionohaul rows 1";

    private Checkpoint() {}

    /**
     * Writes the rows of a study.
     *
     * @param result what was done
     * @param fingerprint all that results depend on but for the number of trials
     * @throws IOException if the stream refuses
     */
    public static void write(StudyResult result, String fingerprint, OutputStream stream) throws IOException {
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(new GZIPOutputStream(stream)))) {
            out.writeUTF(FORMAT);
            out.writeUTF(fingerprint);
            out.writeInt(result.trialsDone());
            for (List<TrialRow> rows : result.rowsByTrial()) {
                out.writeInt(rows.size());
                for (TrialRow row : rows) {
                    row.write(out);
                }
            }
        }
    }

    /**
     * Reads the rows of a study.
     *
     * @param scenario the scenario as it is now
     * @param fingerprint its fingerprint as it is now
     * @return what was done; empty if the rows are of another study or another version of the program
     * @throws IOException if the stream breaks off or is no such file
     */
    public static Optional<StudyResult> read(Scenario scenario, String fingerprint, InputStream stream)
            throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(new GZIPInputStream(stream)))) {
            if (!in.readUTF().equals(FORMAT) || !in.readUTF().equals(fingerprint)) {
                return Optional.empty();
            }
            List<List<TrialRow>> rowsByTrial = new ArrayList<>();
            for (int trials = in.readInt(); trials > 0; trials--) {
                rowsByTrial.add(rows(in));
            }
            return Optional.of(StudyResult.of(scenario, scenario.trials(), rowsByTrial));
        }
    }

    private static List<TrialRow> rows(DataInputStream in) throws IOException {
        List<TrialRow> rows = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            rows.add(TrialRow.read(in));
        }
        return rows;
    }
}
