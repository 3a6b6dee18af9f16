package org.ionohaul.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads a percentage such as {@code 90 %} or {@code 90} into a share below 1. Below 1 % nobody promises; whoever writes 0.9
 * means 90 %, so it is refused.
 */
final class ShareConverter implements ITypeConverter<Double> {
    private static final Pattern PERCENTAGE = Pattern.compile("(\\d{1,2}(?:\\.\\d+)?)\\s*%?");

    @Override
    public Double convert(String value) {
        Matcher percentage = PERCENTAGE.matcher(value.strip());
        if (!percentage.matches() || Double.parseDouble(percentage.group(1)) < 1) {
            throw new TypeConversionException(
                    "\"" + value + "\" is not a percentage from 1 to below 100, such as \"90 %\"");
        }
        return Double.parseDouble(percentage.group(1)) / 100;
    }
}
