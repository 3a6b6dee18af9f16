package org.ionohaul.picture;

/** Styles of lines that are no modes': from faint to strong, with different patterns. */
public final class Tone {
    private static final int TONES = 4;
    private static final int PATTERNS = 4;

    private Tone() {}

    /** Returns the style of a line among so many, the last the strongest. */
    public static String style(int index, int count) {
        long tone = count == 1 ? TONES : Math.round((double) TONES * index / (count - 1));
        return "line t" + tone + " d" + index % PATTERNS;
    }
}
