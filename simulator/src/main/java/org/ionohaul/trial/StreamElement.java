package org.ionohaul.trial;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** The number by which a named thing, such as a mode or a scenario key, is found among the streams of its purpose. */
final class StreamElement {
    private StreamElement() {}

    /** Returns the name's number: it depends on the name alone, not on what else a scenario holds. */
    static int of(String name) {
        CRC32 crc = new CRC32();
        crc.update(name.getBytes(StandardCharsets.UTF_8));
        return (int) crc.getValue();
    }
}
