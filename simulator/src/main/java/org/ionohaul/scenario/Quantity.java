package org.ionohaul.scenario;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Quantities as people write them in scenario files, for wherever else they are written. */
public final class Quantity {
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

    private Quantity() {}

    /**
     * Returns a time such as {@code 20 min}, in seconds.
     *
     * @throws WrongValue if the text is no time
     */
    public static double seconds(String text) throws WrongValue {
        return Dimension.TIME.read(WrittenText.unquoted(text));
    }

    /**
     * Returns a size such as {@code 64 kB}, in bytes.
     *
     * @throws WrongValue if the text is no size
     */
    public static long bytes(String text) throws WrongValue {
        return Math.round(Dimension.SIZE.read(WrittenText.unquoted(text)));
    }

    /**
     * Returns a distance such as {@code 70 km}, in metres.
     *
     * @throws WrongValue if the text is no distance
     */
    public static double metres(String text) throws WrongValue {
        return Dimension.DISTANCE.read(WrittenText.unquoted(text));
    }

    /**
     * Returns a share such as {@code 90 %}, {@code 0.9} or {@code 9/10}.
     *
     * @throws WrongValue if the text is no share
     */
    public static double share(String text) throws WrongValue {
        return Kind.share().read(WrittenText.unquoted(text));
    }

    /**
     * Returns a whole number such as {@code 1000}, {@code 1,000} or {@code 1k}.
     *
     * @throws WrongValue if the text is no whole number
     */
    public static long whole(String text) throws WrongValue {
        return Kind.wholeNumber().read(WrittenText.unquoted(text));
    }

    /**
     * Returns a ratio of levels such as {@code 14 dB}, in dB.
     *
     * @throws WrongValue if the text is no such ratio
     */
    public static double decibels(String text) throws WrongValue {
        return Dimension.RATIO.read(WrittenText.unquoted(text));
    }

    /**
     * Returns a level at a receiver's input, such as {@code S7} or {@code -97 dBm}, in dBm.
     *
     * @throws WrongValue if the text is neither a meter reading nor a level
     */
    public static double levelDbm(String text) throws WrongValue {
        return Kind.meterOrDbmReading().read(WrittenText.unquoted(text));
    }

    /**
     * Returns a time of day such as {@code 18:05} or {@code 18:05:30}, in seconds since midnight.
     *
     * @throws WrongValue if the text is no time of day
     */
    public static double clockSeconds(String text) throws WrongValue {
        return Moment.clock().read(WrittenText.unquoted(text));
    }

    /**
     * Returns a day such as {@code 2031-03-14} or {@code 14.3.2031}.
     *
     * @throws WrongValue if the text is no day
     */
    public static LocalDate date(String text) throws WrongValue {
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        Matcher dayFirst = DAY_FIRST.matcher(text);
        try {
            if (yearFirst.matches()) {
                return LocalDate.of(
                        Integer.parseInt(yearFirst.group(1)),
                        Integer.parseInt(yearFirst.group(2)),
                        Integer.parseInt(yearFirst.group(3)));
            }
            if (dayFirst.matches()) {
                return LocalDate.of(
                        Integer.parseInt(dayFirst.group(3)),
                        Integer.parseInt(dayFirst.group(2)),
                        Integer.parseInt(dayFirst.group(1)));
            }
        } catch (DateTimeException e) {
            throw new WrongValue("\"" + text + "\" is no day of the calendar", "");
        }
        throw new WrongValue("\"" + text + "\" is not a date", "write year, month and day, such as 2031-03-14");
    }
}
