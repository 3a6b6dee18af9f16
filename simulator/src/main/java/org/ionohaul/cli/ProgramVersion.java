package org.ionohaul.cli;

import org.ionohaul.scenario.Provenance;
import picocli.CommandLine.IVersionProvider;

/** The program's version. */
final class ProgramVersion implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"ionohaul " + Provenance.programVersion()};
    }
}
