package org.ionohaul.cli;

import org.ionohaul.scenario.Quantity;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time such as {@code 15 min} into seconds. */
final class SecondsConverter implements ITypeConverter<Double> {
    @Override
    public Double convert(String value) {
        try {
            return Quantity.seconds(value);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }
}
