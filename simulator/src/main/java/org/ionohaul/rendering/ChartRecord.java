package org.ionohaul.rendering;

import org.ionohaul.picture.Picture;

/**
 * What a picture shows, without how it looks: a record of numbers and words. The function of {@code charts.js} that has the
 * record's name draws it.
 */
public interface ChartRecord extends Picture {
    @Override
    default String svg(int width) {
        throw new UnsupportedOperationException(kind() + " is drawn by the page's script");
    }

    /** Returns the name of the function that draws it. */
    default String kind() {
        return getClass().getSimpleName();
    }

    /** Returns the data as JSON that may stand in a page. */
    default String json() {
        return JsonForm.onPage(this);
    }
}
