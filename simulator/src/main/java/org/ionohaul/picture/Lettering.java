package org.ionohaul.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room words take. The font is the reader's; reckoned with is DejaVu Sans, one of the widest that browsers fall back
 * to, so that what fits in it fits in others.
 */
public final class Lettering {
    /** Advances of the characters from the space to the tilde in DejaVu Sans, in hundredths of its size, read off the font. */
    private static final int[] ADVANCES = {
        32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34,
        84, 84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79, 60, 79, 69, 63, 61, 73, 68, 99,
        69, 61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63, 63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52,
        39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84
    };

    /** Of a character that is not among them; those of East Asia are as wide as high. */
    private static final int OTHER = 100;

    /** The bold face is at most so much wider, in the mean of a word. */
    private static final double BOLD = 1.14;

    private Lettering() {}

    /** Returns how wide words are, in units of which the font has {@code size}. */
    public static double width(String words, double size) {
        return words.codePoints().map(Lettering::advance).sum() * size / 100;
    }

    /** Returns how wide bold words are. */
    public static double boldWidth(String words, double size) {
        return BOLD * width(words, size);
    }

    private static int advance(int character) {
        int index = character - ' ';
        return index >= 0 && index < ADVANCES.length ? ADVANCES[index] : OTHER;
    }

    /** Returns words in lines no longer than so much; words longer than a line are parted. */
    public static List<String> lines(String words, double size, double longest) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : WordBreaks.parts(words)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= longest) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, size) > longest && line.codePointCount(0, line.length()) > 1) {
                int end = fitting(line, size, longest);
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        lines.add(line);
        return lines;
    }

    private static int fitting(String word, double size, double longest) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length() && width(word.substring(0, word.offsetByCodePoints(end, 1)), size) <= longest) {
            end = word.offsetByCodePoints(end, 1);
        }
        return end;
    }
}
