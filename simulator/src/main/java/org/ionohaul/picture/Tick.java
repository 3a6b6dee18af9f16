package org.ionohaul.picture;

/**
 * A mark of an axis.
 *
 * @param value where, in the scale's unit
 * @param label what stands there; empty for a mark alone
 */
public record Tick(double value, String label) {}
