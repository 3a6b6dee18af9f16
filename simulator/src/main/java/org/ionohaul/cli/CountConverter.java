package org.ionohaul.cli;

import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a count such as {@code 1000}, {@code 1,000} or {@code 1k}. */
final class CountConverter implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String value) {
        try {
            long count = Quantity.whole(value);
            if (count != (int) count) {
                throw new TypeConversionException(
                        "\"" + value + "\" is too large\n    write a whole number of at most " + Integer.MAX_VALUE);
            }
            return (int) count;
        } catch (WrongValue e) {
            throw WrongOption.of(e);
        }
    }
}
