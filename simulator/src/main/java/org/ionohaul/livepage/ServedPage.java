package org.ionohaul.livepage;

import java.net.URI;

/** A page that is served on this machine until it is closed. */
public interface ServedPage extends AutoCloseable {
    /** Returns its address. */
    URI address();

    @Override
    void close();
}
