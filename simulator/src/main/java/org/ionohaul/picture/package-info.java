/** Draws pictures as SVG text: scales, axes, lines, bands, bars, and lettering that neither overlaps nor is cut off. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.picture;
