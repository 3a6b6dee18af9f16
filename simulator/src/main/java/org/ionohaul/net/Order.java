package org.ionohaul.net;

import java.util.Comparator;

/** Which of several waiting messages goes first. */
public enum Order {
    /** The one written first. */
    FIRST_COME,
    /** The most urgent kind; of one kind the one written first. */
    PRIORITY,
    /** The shortest; of equals the one written first. */
    SHORT_FIRST;

    /** Returns the order of messages: no two are equal. */
    Comparator<Letter> comparator() {
        Comparator<Letter> first = switch (this) {
            case FIRST_COME -> Comparator.comparingLong(Letter::writtenNanos);
            case PRIORITY -> Comparator.comparingInt(it -> it.kind().priority());
            case SHORT_FIRST -> Comparator.comparingLong(Letter::bytes);
        };
        return first.thenComparingLong(Letter::writtenNanos).thenComparingInt(Letter::number);
    }
}
