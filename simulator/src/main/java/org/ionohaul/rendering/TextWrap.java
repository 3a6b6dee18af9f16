package org.ionohaul.rendering;

import java.util.ArrayList;
import java.util.List;

/** Running text in lines of limited length, broken between words. */
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
        for (String word : text.strip().split("\\s+", -1)) {
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
