package org.ionohaul.cli;

import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.ITypeConverter;

/** Reads a size such as {@code 40 kB} into bytes. */
final class BytesConverter implements ITypeConverter<Long> {
    @Override
    public Long convert(String value) {
        try {
            return Quantity.bytes(value);
        } catch (WrongValue e) {
            throw WrongOption.of(e);
        }
    }
}
