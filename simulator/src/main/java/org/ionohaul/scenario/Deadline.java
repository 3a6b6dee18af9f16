package org.ionohaul.scenario;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * By when something must be through: so long after pressing send, or by the clock on the wall.
 *
 * @param seconds seconds after pressing send, or since midnight
 * @param isClock whether it is by the clock
 */
public record Deadline(double seconds, boolean isClock) {
    private static final Pattern BY = Pattern.compile("(?:by|until|before)\\s+(.*)");
    private static final double DAY_SECONDS = 86_400;

    /** Reads {@code 20 min}, {@code 18:30} or {@code by 18:30}. */
    static Kind<Deadline> kind() {
        return new Kind<>("a time of day or after pressing send", value -> {
            Matcher by = BY.matcher(WrittenText.plain(String.valueOf(value)));
            Object when = by.matches() ? by.group(1) : value;
            return String.valueOf(when).contains(":")
                    ? new Deadline(Moment.clock().read(when), true)
                    : new Deadline(Kind.quantity(Dimension.TIME).read(when), false);
        });
    }

    /**
     * Returns a deadline as people write it.
     *
     * @throws WrongValue if the text is none
     */
    public static Deadline of(String text) throws WrongValue {
        return kind().read(WrittenText.unquoted(text));
    }

    /**
     * Returns it in seconds after pressing send. A time of day is the next one: with send pressed at {@code 23:50},
     * {@code 00:10} comes 20 minutes later.
     *
     * @param sendClockSeconds time of day when send is pressed, in seconds since midnight
     */
    public double afterSend(double sendClockSeconds) {
        return isClock ? (seconds - sendClockSeconds + DAY_SECONDS) % DAY_SECONDS : seconds;
    }
}
