package org.ionohaul.channel;

import java.util.Locale;

/** A constant that a scenario chooses by its name. */
public interface Named {
    /** Returns the constant's name. */
    String name();

    /** Returns the name as a scenario writes it, such as {@code quiet-rural}. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
