package org.ionohaul.rendering;

/**
 * What a picture shows, without how it looks: a record of numbers and words. The function of {@code charts.js} that has the
 * record's name draws it.
 */
public interface ChartRecord {
    /** Returns the name of the function that draws it. */
    default String kind() {
        return getClass().getSimpleName();
    }

    /** Returns the data as JSON that may stand in a page. */
    default String json() {
        return JsonForm.onPage(this);
    }
}
