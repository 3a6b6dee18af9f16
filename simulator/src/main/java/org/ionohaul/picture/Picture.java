package org.ionohaul.picture;

/**
 * A picture that can be drawn at any width. Drawing is a pure function: the same picture and width are the same text. Colours,
 * dashes and fonts are the page's: shapes only have names of styles.
 */
public interface Picture {
    /** Width of a picture on a phone, in CSS pixels. */
    int NARROW = 350;

    /** Returns how wide it is drawn where there is room, in CSS pixels. */
    default int wide() {
        return 520;
    }

    /**
     * Returns it as an SVG element.
     *
     * @param width how wide, in CSS pixels, {@link #NARROW} or more
     */
    String svg(int width);
}
