/** Estimates quantiles, intervals, survival curves and paired differences. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.statistics;
