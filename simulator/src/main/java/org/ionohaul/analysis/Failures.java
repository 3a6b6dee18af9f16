package org.ionohaul.analysis;

import org.ionohaul.statistics.Proportion;

/**
 * How sessions failed that did not deliver everything; each belongs to just one of these.
 *
 * @param neverLinked no call was ever answered, whatever ended the session
 * @param linksLost it had a link, lost it, and used up its redials
 * @param outOfPatience it had a link, and the operator of the station that dials broke off
 * @param stillSending it had a link and was still running at the horizon
 */
public record Failures(
        Proportion neverLinked, Proportion linksLost, Proportion outOfPatience, Proportion stillSending) {}
