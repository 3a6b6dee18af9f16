package org.ionohaul.trial;

import java.util.List;
import org.ionohaul.net.AirSpan;
import org.ionohaul.net.Letter;
import org.ionohaul.net.MessageKind;

/**
 * What one trial of a net came to.
 *
 * @param messages all that were written, in order of writing
 * @param occupiedNanos for how long of the time that counts somebody was on the air, over all channels
 * @param collidedNanos for how long of it two or more were at once
 * @param toBusyGatewayNanos for how long of it somebody called a gateway that worked another station
 * @param calls how many calls were begun
 * @param refusals how many calls a busy gateway heard and did not answer
 * @param cutOff how many sessions it broke off at its limit
 * @param spans every burst, if they were to be kept
 */
public record NetTrial(
        List<Message> messages,
        long occupiedNanos,
        long collidedNanos,
        long toBusyGatewayNanos,
        int calls,
        int refusals,
        int cutOff,
        List<AirSpan> spans) {
    /** An instant that has not come. */
    public static final long NEVER = Letter.NEVER;

    /**
     * A message; instants in nanoseconds since the trial began, {@link #NEVER} if they have not come.
     *
     * @param kind what kind it is
     * @param station the station that wrote it or for which it was written
     * @param bytes how long it is
     * @param writtenNanos when it was written
     * @param begunNanos when the call that handed it over was answered
     * @param deliveredNanos when it was delivered
     * @param givenUpNanos when it was given up
     * @param calls in how many calls it was to be handed over
     */
    public record Message(
            MessageKind kind,
            int station,
            long bytes,
            long writtenNanos,
            long begunNanos,
            long deliveredNanos,
            long givenUpNanos,
            int calls) {
        static Message of(Letter letter, long horizonNanos) {
            return new Message(
                    letter.kind(),
                    letter.station(),
                    letter.bytes(),
                    letter.writtenNanos(),
                    letter.begunNanos(),
                    letter.deliveredNanos() <= horizonNanos ? letter.deliveredNanos() : NEVER,
                    letter.givenUpNanos(),
                    letter.calls());
        }

        /** Returns whether it was delivered while the trial was watched. */
        public boolean isDelivered() {
            return deliveredNanos < NEVER;
        }

        /** Returns how long it took from written to delivered, in seconds; infinite if it never was. */
        public double seconds() {
            return isDelivered() ? (deliveredNanos - writtenNanos) * 1e-9 : Double.POSITIVE_INFINITY;
        }

        /** Returns how long it waited for the call that handed it over, in seconds; infinite if there was none. */
        public double waitSeconds() {
            return isDelivered() ? Math.max(0, begunNanos - writtenNanos) * 1e-9 : Double.POSITIVE_INFINITY;
        }
    }

    /** Copies the lists. */
    public NetTrial {
        messages = List.copyOf(messages);
        spans = List.copyOf(spans);
    }
}
