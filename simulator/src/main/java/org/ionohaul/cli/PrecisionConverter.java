package org.ionohaul.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.study.PrecisionGoal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads how exact answers must be, such as {@code P(deadline) within 2 points}, {@code P(deadline) above or below 90 % within 2
 * points} or {@code 90 % time within 5 %}.
 */
public final class PrecisionConverter implements ITypeConverter<PrecisionGoal> {
    private static final String NUMBER = "(\\d{1,2}(?:\\.\\d+)?)";
    private static final Pattern DEADLINES =
            Pattern.compile("p\\(deadline\\)(?: above or below " + NUMBER + " ?%)? within " + NUMBER + " points?");
    private static final Pattern QUANTILE =
            Pattern.compile("(?:median|" + NUMBER + " ?%) ?(?:time)? ?within " + NUMBER + " ?%");

    @Override
    public PrecisionGoal convert(String value) {
        String text = value.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        try {
            Matcher deadlines = DEADLINES.matcher(text);
            if (deadlines.matches()) {
                double width = share(deadlines.group(2));
                return deadlines.group(1) == null
                        ? new PrecisionGoal.DeadlineChances(width)
                        : new PrecisionGoal.DeadlineSides(share(deadlines.group(1)), width);
            }
            Matcher quantile = QUANTILE.matcher(text);
            if (quantile.matches()) {
                return new PrecisionGoal.CompletionQuantile(
                        quantile.group(1) == null ? 0.5 : share(quantile.group(1)), share(quantile.group(2)));
            }
        } catch (OutOfRange e) {
            throw new TypeConversionException(
                    "\"" + value + "\" cannot be reached: write a share of" + " trials and a width above 0");
        }
        throw new TypeConversionException(
                "\"" + value + "\" is no precision; write \"P(deadline) within 2 points\","
                        + " \"P(deadline) above or below 90 % within 2 points\", \"median within 5 %\" or \"90 % time within 5 %\"");
    }

    private static double share(String percent) {
        return Double.parseDouble(percent) / 100;
    }
}
