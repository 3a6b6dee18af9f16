package org.ionohaul.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a percentage such as {@code 90 %} or {@code 90} into a share above 0 and below 1. */
final class ShareConverter implements ITypeConverter<Double> {
    private static final Pattern PERCENTAGE = Pattern.compile("(\\d{1,2}(?:\\.\\d+)?)\\s*%?");

    @Override
    public Double convert(String value) {
        Matcher percentage = PERCENTAGE.matcher(value.strip());
        if (!percentage.matches() || Double.parseDouble(percentage.group(1)) == 0) {
            throw new TypeConversionException(
                    "\"" + value + "\" is not a percentage above 0 and below 100, such as \"90 %\"");
        }
        return Double.parseDouble(percentage.group(1)) / 100;
    }
}
