package org.ionohaul.analysis;

import org.ionohaul.session.Outcome;
import org.ionohaul.statistics.Proportion;

/**
 * How often sessions ended in one way.
 *
 * @param outcome the way
 * @param count how many of how many trials
 */
public record OutcomeShare(Outcome outcome, Proportion count) {}
