package org.ionohaul.scenario;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When something happens, by the clock on the wall or counted from pressing send; may be uncertain.
 *
 * @param seconds seconds since midnight, or since pressing send
 * @param isClock whether it is by the clock
 */
record Moment(Uncertain seconds, boolean isClock) {
    private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3]):([0-5]\\d)(?::([0-5]\\d))?");
    private static final double DAY_SECONDS = 86_400;

    /** A time of day in seconds since midnight, written {@code "18:05"}. */
    static Kind<Double> clock() {
        return new Kind<>("a time of day", value -> {
            Matcher parts = CLOCK.matcher(WrittenText.plain(String.valueOf(value)));
            if (!parts.matches()) {
                throw new WrongValue(
                        Kind.shown(value) + " is not a time of day", "write hours and minutes such as \"18:05\"");
            }
            String seconds = parts.group(3);
            return 3600 * Double.parseDouble(parts.group(1))
                    + 60 * Double.parseDouble(parts.group(2))
                    + (seconds == null ? 0 : Double.parseDouble(seconds));
        });
    }

    /** A time of day, or a time after pressing send, written {@code "20 min"}. */
    static Kind<Moment> kind() {
        Kind<Double> after = Kind.quantity(Dimension.TIME);
        Kind<Uncertain> byClock = new UncertainReading(clock(), after, "18:05").kind();
        Kind<Uncertain> bySend = new UncertainReading(after, after, "20 min").kind();
        return new Kind<>("a time of day or after pressing send" + UncertainReading.MARK, value -> {
            boolean isClock = String.valueOf(value).contains(":");
            return new Moment((isClock ? byClock : bySend).read(value), isClock);
        });
    }

    /** Returns the middle of what it can be, in seconds since midnight or since pressing send. */
    private double middleSeconds() {
        return seconds.quantile(0.5);
    }

    /**
     * Returns its middle in seconds after pressing send. A time of day means the one nearest to pressing send or, after
     * an earlier moment, to that one: {@code "00:10"} comes after {@code "23:50"}.
     *
     * @param sendClockSeconds time of day when send is pressed, in seconds since midnight
     * @param earlierSeconds the moment before, in seconds after pressing send
     */
    double middleAfterSend(double sendClockSeconds, double earlierSeconds) {
        return isClock
                ? earlierSeconds + Math.IEEEremainder(middleSeconds() - sendClockSeconds - earlierSeconds, DAY_SECONDS)
                : middleSeconds();
    }

    /** Returns how far a drawn instant lies from the middle, in seconds. */
    double offset(double drawnSeconds) {
        return drawnSeconds - middleSeconds();
    }
}
