package org.ionohaul.cli;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ionohaul.scenario.Provenance;

/** All that a study's rows depend on, in one line of text. */
final class StudyFingerprint {
    private static final String TRIALS = "trials";

    private StudyFingerprint() {}

    /**
     * Returns the fingerprint.
     *
     * @param provenance version and files
     * @param seed the seed of all chance
     * @param changes what the command line says instead of the file; the number of trials changes no row
     */
    static String of(Provenance provenance, long seed, Map<String, String> changes) {
        Map<String, String> inOrder = new TreeMap<>(changes);
        inOrder.remove(TRIALS);
        String inputs = provenance.inputs().stream().map(it -> it.sha256()).collect(Collectors.joining(","));
        return String.join("|", provenance.version(), inputs, Long.toString(seed), inOrder.toString());
    }
}
