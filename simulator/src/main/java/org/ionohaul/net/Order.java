package org.ionohaul.net;

import java.util.Comparator;

/** Which of several waiting messages goes first. */
public enum Order {
    /** The one written first. */
    FIRST_COME(Comparator.comparingLong(Letter::writtenNanos)),
    /** The most urgent kind; of one kind the one written first. */
    PRIORITY(Comparator.<Letter>comparingInt(it -> it.kind().priority()).thenComparingLong(Letter::writtenNanos)),
    /** The shortest; of equals the one written first. */
    SHORT_FIRST(Comparator.comparingLong(Letter::bytes).thenComparingLong(Letter::writtenNanos));

    private final Comparator<Letter> comparator;

    Order(Comparator<Letter> comparator) {
        this.comparator = comparator.thenComparingInt(Letter::number);
    }

    /** Returns the order of messages: no two are equal. */
    public Comparator<Letter> comparator() {
        return comparator;
    }
}
