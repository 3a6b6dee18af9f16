package org.ionohaul.placing;

import java.util.List;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;

/**
 * What a published result came from.
 *
 * @param programVersion version of the program
 * @param scenario name of the scenario
 * @param title its title
 * @param seed of all chance
 * @param files the files that went in: the scenario first, then its modes, the log last
 * @param changes keys that got another value than the files give them
 */
public record PublishedSource(
        String programVersion, String scenario, String title, long seed, List<File> files, List<Change> changes) {
    /** A file that went in. */
    public record File(String name, String sha256) {}

    /** A key and its value. */
    public record Change(String key, String value) {}

    /** Returns the source of a result. */
    public static PublishedSource of(Scenario scenario, Provenance provenance) {
        return new PublishedSource(
                provenance.version(),
                scenario.name(),
                scenario.title(),
                scenario.seed(),
                provenance.inputs().stream().map(PublishedSource::file).toList(),
                provenance.changes().entrySet().stream()
                        .map(it -> new Change(it.getKey(), it.getValue()))
                        .toList());
    }

    private static File file(InputFile file) {
        return new File(file.name(), file.sha256());
    }
}
