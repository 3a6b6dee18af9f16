package org.ionohaul.cli;

import java.util.regex.Pattern;
import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.ITypeConverter;

/** Reads a time into seconds; a bare number counts minutes, as the option's name says. */
final class MinutesConverter implements ITypeConverter<Double> {
    private static final Pattern BARE = Pattern.compile("[\\d.,\\s]*\\d\\s*");

    @Override
    public Double convert(String value) {
        try {
            return Quantity.seconds(BARE.matcher(value).matches() ? value + " min" : value);
        } catch (WrongValue e) {
            throw WrongOption.of(e);
        }
    }
}
