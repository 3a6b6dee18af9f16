package org.ionohaul.rendering;

import org.ionohaul.picture.Picture;

/**
 * A picture on a page, with what is said of it.
 *
 * @param id a name unique on the page
 * @param title what it shows
 * @param reading how to read it
 * @param description what those are told who hear the page
 * @param picture what is drawn
 * @param table the numbers behind it; empty if they stand elsewhere
 */
public record Chart(String id, String title, String reading, String description, Picture picture, Table table) {}
