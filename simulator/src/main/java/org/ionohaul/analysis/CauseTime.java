package org.ionohaul.analysis;

import org.ionohaul.session.Cause;

/**
 * How long sessions spent on a cause.
 *
 * @param cause the cause
 * @param meanSeconds mean over all trials, in seconds
 */
public record CauseTime(Cause cause, double meanSeconds) {}
