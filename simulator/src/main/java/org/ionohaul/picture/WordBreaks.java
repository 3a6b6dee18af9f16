package org.ionohaul.picture;

import java.util.List;
import java.util.regex.Pattern;

/** Where lines of words may break: at blanks, but neither between a number and its unit nor within a time such as 6 min 15 s. */
public final class WordBreaks {
    private static final String UNIT = "(?:%|min|ms|s|h|/h|dB|dBm|Hz|kHz|MHz|bytes?|B|kB|MB|bit/s|km|W)(?!\\p{Alnum})";
    private static final Pattern BREAK =
            Pattern.compile(" (?!(?<=\\d )" + UNIT + ")(?!(?<=\\d (?:min|h) )\\d+ (?:s|min)(?!\\p{Alnum}))");

    private WordBreaks() {}

    /** Returns what stays on a line, each part from one break to the next. */
    public static List<String> parts(String words) {
        return List.of(BREAK.split(words, -1));
    }

    /** Returns the words with blanks at which nothing breaks where none may, for those that break lines themselves. */
    public static String held(String words) {
        return String.join(
                " ", parts(words).stream().map(it -> it.replace(' ', '\u00a0')).toList());
    }
}
