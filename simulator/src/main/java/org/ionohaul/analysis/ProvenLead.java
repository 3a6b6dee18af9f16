package org.ionohaul.analysis;

/**
 * The file sizes at which one of two modes comes first more often, beyond chance. Sizes in between at which nothing can be
 * told are counted to it: the two would have to change places twice there.
 *
 * @param mode name of the mode
 * @param fromBytes the smallest of {@link org.ionohaul.study.SizeGrid} at which it is so
 * @param toBytes the largest
 */
public record ProvenLead(String mode, long fromBytes, long toBytes) {}
