package org.ionohaul.trace;

import java.util.List;
import org.ionohaul.session.Cause;

/**
 * A stretch of the dialling station's time.
 *
 * @param cause what it went to
 * @param fromNanos when it began, in nanoseconds since the trial began
 * @param untilNanos when it ended
 */
record TraceSpan(Cause cause, long fromNanos, long untilNanos) {
    /** Adds a stretch, joined to the last one if that went to the same cause. */
    static void append(List<TraceSpan> spans, Cause cause, long fromNanos, long untilNanos) {
        int last = spans.size() - 1;
        if (last >= 0 && spans.get(last).cause == cause) {
            spans.set(last, new TraceSpan(cause, spans.get(last).fromNanos, untilNanos));
        } else {
            spans.add(new TraceSpan(cause, fromNanos, untilNanos));
        }
    }
}
