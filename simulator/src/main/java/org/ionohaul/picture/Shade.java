package org.ionohaul.picture;

import java.util.Locale;

/** Greys from pale to dark, the same on a light and on a dark page, so that dark means the same everywhere. */
public final class Shade {
    /** How many there are. */
    public static final int COUNT = 10;

    private static final int PALE = 0xdf;
    private static final int DARK = 0x24;
    /** Below this luminance white lettering stands out better than black: both do by 4.58 to 1 there (WCAG 2). */
    private static final double EQUAL = 0.179;

    private Shade() {}

    /** Returns the style of a share from 0, the palest, to 1, the darkest. */
    public static String style(double share) {
        return "g" + Math.round((COUNT - 1) * share);
    }

    /** Returns the style of one step among so many, from pale to dark. */
    public static String style(int index, int count) {
        return style(count == 1 ? 0.5 : index / (count - 1.0));
    }

    /** Returns a shade's colour as CSS writes it. */
    public static String colour(int index) {
        int grey = Math.round(PALE + (DARK - PALE) * index / (COUNT - 1f));
        return String.format(Locale.ROOT, "#%02x%02x%02x", grey, grey, grey);
    }

    /** Returns black or white, whichever can be read on a colour. */
    public static String inkOn(String colour) {
        return luminance(colour) < EQUAL ? "#fff" : "#000";
    }

    /** Relative luminance, WCAG 2.2. */
    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear((rgb >> 8) & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
