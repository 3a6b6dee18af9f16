package org.ionohaul.cli;

import org.ionohaul.scenario.Quantity;
import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads how sure a promise must be: {@code 90 %}, {@code 90}, {@code 0.9} or {@code 9/10}, into a share below 1. */
final class ShareConverter implements ITypeConverter<Double> {
    /** Below 1 % nobody promises; a bare number from here on is a percentage, since no share is so large. */
    private static final double LEAST_PERCENT = 1;

    @Override
    public Double convert(String value) {
        double share = share(value);
        if (!(share >= LEAST_PERCENT / 100 && share < 1)) {
            throw new TypeConversionException("\"" + value + "\" is not a share from 1 % to below 100 %\n"
                    + "    write a share such as \"90 %\", 0.9 or \"9/10\"");
        }
        return share;
    }

    private static double share(String value) {
        try {
            double share = Quantity.share(value);
            return share > LEAST_PERCENT && !value.contains("%") ? share / 100 : share;
        } catch (WrongValue e) {
            throw WrongOption.of(e);
        }
    }
}
