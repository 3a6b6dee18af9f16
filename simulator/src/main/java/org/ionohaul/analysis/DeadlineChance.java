package org.ionohaul.analysis;

import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;

/**
 * How likely everything is delivered by a deadline.
 *
 * @param deadlineSeconds the deadline, in seconds after pressing send
 * @param count how many of how many trials kept it
 * @param chance their share, with interval
 */
public record DeadlineChance(double deadlineSeconds, Proportion count, Estimate chance) {}
