package org.ionohaul.scenario;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a result came from, beside the seed: enough to get it again, byte for byte.
 *
 * @param version version of the program
 * @param inputs the scenario file first, then the mode files, then tables of readings
 * @param changes values that were taken instead of those in the files, by key
 */
public record Provenance(String version, List<InputFile> inputs, Map<String, String> changes) {
    /** Copies list and map. */
    public Provenance {
        inputs = List.copyOf(inputs);
        changes = Collections.unmodifiableMap(new TreeMap<>(changes));
    }

    /** Returns it with another file that went in. */
    public Provenance with(InputFile file) {
        return new Provenance(
                version, Stream.concat(inputs.stream(), Stream.of(file)).toList(), changes);
    }

    /** Returns the version of the program, from the manifest of the jar it runs from. */
    public static String programVersion() {
        return Optional.ofNullable(Provenance.class.getPackage().getImplementationVersion())
                .orElse("development version");
    }
}
