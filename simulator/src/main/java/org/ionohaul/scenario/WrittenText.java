package org.ionohaul.scenario;

import java.util.regex.Pattern;

/** What people type around a value without meaning anything by it. */
final class WrittenText {
    private static final Pattern ODD_SPACES = Pattern.compile("[\u00A0\u2007\u2009\u202F]");
    private static final String QUOTES = "\"“”„‟«»";

    private WrittenText() {}

    /** Returns a text without spaces around it, with ordinary spaces inside. */
    static String plain(String text) {
        return ODD_SPACES.matcher(text).replaceAll(" ").strip();
    }

    /** Returns a text without the quotation marks around it, straight or curly, that a shell leaves when they are wrong. */
    static String unquoted(String text) {
        String plain = plain(text);
        int start = 0;
        int end = plain.length();
        while (start < end && QUOTES.indexOf(plain.charAt(start)) >= 0) {
            start++;
        }
        while (end > start && QUOTES.indexOf(plain.charAt(end - 1)) >= 0) {
            end--;
        }
        return plain.substring(start, end).strip();
    }
}
