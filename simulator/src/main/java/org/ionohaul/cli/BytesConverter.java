package org.ionohaul.cli;

import org.ionohaul.scenario.Quantity;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a size such as {@code 40 kB} into bytes. */
final class BytesConverter implements ITypeConverter<Long> {
    @Override
    public Long convert(String value) {
        try {
            return Quantity.bytes(value);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }
}
