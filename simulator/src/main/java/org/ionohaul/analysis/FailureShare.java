package org.ionohaul.analysis;

import org.ionohaul.statistics.Proportion;

/**
 * How often a mode failed in one way.
 *
 * @param limit what kept it from delivering within the time watched
 * @param count how many of how many trials
 */
public record FailureShare(Limit limit, Proportion count) {}
