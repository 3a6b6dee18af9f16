package org.ionohaul.report;

/**
 * A picture on the page.
 *
 * @param title what it shows
 * @param reading how to read it
 * @param svg the picture, an SVG element
 * @param table the numbers behind it; empty if they stand elsewhere
 */
public record Figure(String title, String reading, String svg, Table table) {}
