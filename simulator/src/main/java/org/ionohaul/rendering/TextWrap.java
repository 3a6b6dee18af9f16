package org.ionohaul.rendering;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.picture.WordBreaks;

/** Running text in lines of limited length, broken where {@link WordBreaks} allows it. */
public final class TextWrap {
    private TextWrap() {}

    /**
     * Returns the lines.
     *
     * @param text words with blanks between
     * @param indent what each line begins with
     * @param mostCharacters longest line, unless a single word is longer
     */
    public static List<String> lines(String text, String indent, int mostCharacters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        for (String word : WordBreaks.parts(text.strip().replaceAll("\\s+", " "))) {
            boolean isFirst = line.length() == indent.length();
            if (!isFirst && line.length() + 1 + word.length() > mostCharacters) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                isFirst = true;
            }
            line.append(isFirst ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
