package org.ionohaul.analysis;

import org.ionohaul.statistics.Estimate;
import org.ionohaul.study.SizeGrid;

/**
 * The largest file that may be promised.
 *
 * @param deadlineSeconds by when, in seconds after pressing send
 * @param confidence how sure, above 0, below 1
 * @param bytes the largest size of {@link SizeGrid} of which at least that share of trials is through by then, 0 if not
 *     even the smallest is; with the largest that is so for certain (95 %) and the largest that may be so
 */
public record Promise(double deadlineSeconds, double confidence, Estimate bytes) {}
