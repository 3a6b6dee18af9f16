package org.ionohaul.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The program's version, from the manifest of the jar it runs from. */
final class ProgramVersion implements IVersionProvider {
    static String text() {
        return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
                .orElse("development version");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"ionohaul " + text()};
    }
}
