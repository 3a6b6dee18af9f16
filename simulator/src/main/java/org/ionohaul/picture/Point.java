package org.ionohaul.picture;

/** A place in a picture: in the units of its scales or, where said, in pixels to the right and down. */
public record Point(double x, double y) {}
