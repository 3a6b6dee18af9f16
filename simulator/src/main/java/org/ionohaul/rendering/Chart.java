package org.ionohaul.rendering;

/**
 * A picture on a page, drawn there by the page's script.
 *
 * @param id a name unique on the page
 * @param title what it shows
 * @param reading how to read it
 * @param description what those are told who hear the page
 * @param data what is drawn
 * @param table the numbers behind it; empty if they stand elsewhere
 */
public record Chart(String id, String title, String reading, String description, ChartRecord data, Table table) {}
