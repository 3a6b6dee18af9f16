package org.ionohaul.report;

import java.util.List;

/**
 * What a result came from, beside the seed: enough to get it again, byte for byte.
 *
 * @param version version of the program
 * @param inputs the scenario file first, then the mode files
 */
public record Provenance(String version, List<InputFile> inputs) {
    /** Copies the list. */
    public Provenance {
        inputs = List.copyOf(inputs);
    }
}
