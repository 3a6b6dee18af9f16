package org.ionohaul.rendering;

/**
 * A picture on a page, drawn there by the charting library.
 *
 * @param id a name unique on the page
 * @param title what it shows
 * @param reading how to read it
 * @param description what those are told who hear the page
 * @param heightPixels height
 * @param options what the charting library reads, in its own terms, save for what {@code charts.js} adds
 * @param table the numbers behind it; empty if they stand elsewhere
 */
public record Chart(
        String id, String title, String reading, String description, int heightPixels, Json options, Table table) {}
