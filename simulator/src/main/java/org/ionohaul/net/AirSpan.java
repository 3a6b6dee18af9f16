package org.ionohaul.net;

/**
 * A burst on the air.
 *
 * @param channel from 0
 * @param from the number of who sent it
 * @param to the number of whom it was meant for
 * @param fromNanos when it began, in nanoseconds since the trial began
 * @param untilNanos when it ended
 * @param isToBusyGateway whether it called a gateway that worked another station
 */
public record AirSpan(int channel, int from, int to, long fromNanos, long untilNanos, boolean isToBusyGateway) {}
