package org.ionohaul.scenario;

/**
 * Something in a file that can be used as it stands, but that hardly anybody means.
 *
 * @param told where it stands, what is odd about it, and what to write if something else was meant
 */
public record Warning(Problem told) implements Comparable<Warning> {
    @Override
    public int compareTo(Warning other) {
        return told.compareTo(other.told);
    }

    /** Returns the warning as a person reads it. */
    public String text() {
        return told.text();
    }
}
