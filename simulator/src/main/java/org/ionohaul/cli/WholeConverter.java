package org.ionohaul.cli;

import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.ITypeConverter;

/** Reads a whole number such as a seed or the number of a trial. */
final class WholeConverter implements ITypeConverter<Long> {
    @Override
    public Long convert(String value) {
        try {
            return Quantity.whole(value);
        } catch (WrongValue e) {
            throw WrongOption.of(e);
        }
    }
}
