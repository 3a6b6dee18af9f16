package org.ionohaul.placing;

import java.util.OptionalLong;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;

/**
 * What matters of a simulated session for laying a logged one beside it.
 *
 * @param deliveredSeconds when the receiver held everything, from pressing send; infinite if never
 * @param endedSeconds when the session ended for the station that dialled, or the horizon
 * @param bytesThrough what the receiver held when the logged run was broken off; at the end if it was not
 */
public record SimulatedRun(double deliveredSeconds, double endedSeconds, long bytesThrough) {
    /**
     * Returns what matters of a session.
     *
     * @param watchedSeconds until when bytes are counted; infinite for all
     */
    public static SimulatedRun of(SessionResult result, double watchedSeconds) {
        OptionalLong delivered = result.deliveredNanos();
        return new SimulatedRun(
                delivered.isPresent() ? delivered.getAsLong() / 1e9 : Double.POSITIVE_INFINITY,
                result.endedNanos() / 1e9,
                held(result.progress(), watchedSeconds));
    }

    private static long held(ProgressCurve progress, double watchedSeconds) {
        long held = 0;
        for (int rise = 0; rise < progress.size() && progress.atNanos(rise) / 1e9 <= watchedSeconds; rise++) {
            held = progress.heldBytes(rise);
        }
        return held;
    }
}
