package org.ionohaul.scenario;

import java.io.Serializable;
import java.util.Comparator;

/**
 * One thing that is wrong in a file, told to the person who wrote it.
 *
 * @param file the file as the user named it, or where else the value came from
 * @param line the line, from 1; 0 when the value stands in no file
 * @param column the column, from 1; 0 when the value stands in no file
 * @param key full name of the key, such as {@code near.snr} or {@code level.3.code-rate}; empty for an error of syntax
 * @param message what is wrong
 * @param remedy what would be right; may be empty
 */
public record Problem(String file, int line, int column, String key, String message, String remedy)
        implements Comparable<Problem>, Serializable {
    private static final Comparator<Problem> BY_PLACE = Comparator.comparing(Problem::file)
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column)
            .thenComparing(Problem::key)
            .thenComparing(Problem::message)
            .thenComparing(Problem::remedy);

    private static final int MOST_OF_NAME = 200;
    private static final int MOST_OF_SENTENCE = 500;

    /** Writes out what a terminal would obey, and cuts short what is longer than anyone reads: both may come from files. */
    public Problem {
        file = PlainText.of(file);
        key = PlainText.shortened(PlainText.of(key), MOST_OF_NAME);
        message = PlainText.shortened(PlainText.of(message), MOST_OF_SENTENCE);
        remedy = PlainText.shortened(PlainText.of(remedy), MOST_OF_SENTENCE);
    }

    @Override
    public int compareTo(Problem other) {
        return BY_PLACE.compare(this, other);
    }

    /** Returns the problem as a person reads it: a line with the place and what is wrong, then one with the remedy. */
    public String text() {
        String place = line == 0 ? file : file + ":" + line + ":" + column;
        String subject = key.isEmpty() ? "" : key + ": ";
        return place + ": " + subject + message + (remedy.isEmpty() ? "" : "\n    " + remedy);
    }
}
