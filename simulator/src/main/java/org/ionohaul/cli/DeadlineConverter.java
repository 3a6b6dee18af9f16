package org.ionohaul.cli;

import org.ionohaul.scenario.Deadline;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.ITypeConverter;

/** Reads a deadline such as {@code 15 min} or {@code 18:30}. */
final class DeadlineConverter implements ITypeConverter<Deadline> {
    @Override
    public Deadline convert(String value) {
        try {
            return Deadline.of(value);
        } catch (WrongValue e) {
            throw WrongOption.of(e);
        }
    }
}
