package org.ionohaul.livepage;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Stills one after another, again and again, as an animated WebP (the container of RFC 9649). */
final class MovingPicture {
    private static final int RIFF_HEADER_BYTES = 12;
    private static final int CHUNK_HEADER_BYTES = 8;
    private static final int IS_ANIMATED = 0x02;
    private static final int WHITE = 0xFFFFFFFF;

    private MovingPicture() {}

    /**
     * Returns the file.
     *
     * @param stills WebP files of one size without transparency
     * @param shownMillis how long each is shown
     */
    static byte[] of(List<byte[]> stills, int wide, int high, int shownMillis) {
        byte[] size = joined(little(wide - 1, 3), little(high - 1, 3));
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(letters("WEBP"));
        all.writeBytes(chunk("VP8X", joined(little(IS_ANIMATED, 4), size)));
        all.writeBytes(chunk("ANIM", joined(little(WHITE, 4), little(0, 2))));
        for (byte[] still : stills) {
            all.writeBytes(
                    chunk("ANMF", joined(little(0, 6), size, little(shownMillis, 3), little(0, 1), pixels(still))));
        }
        return chunk("RIFF", all.toByteArray());
    }

    /** Returns the chunk with the pixels of a still, header and all; what else a still has is left out. */
    private static byte[] pixels(byte[] still) {
        int at = RIFF_HEADER_BYTES;
        while (still[at] != 'V' || still[at + 3] == 'X') {
            at += chunkBytes(still, at);
        }
        return Arrays.copyOfRange(still, at, at + chunkBytes(still, at));
    }

    private static int chunkBytes(byte[] still, int at) {
        int bytes = 0;
        for (int i = CHUNK_HEADER_BYTES - 1; i >= CHUNK_HEADER_BYTES / 2; i--) {
            bytes = (bytes << Byte.SIZE) | (still[at + i] & 0xFF);
        }
        return CHUNK_HEADER_BYTES + bytes + bytes % 2;
    }

    private static byte[] chunk(String name, byte[] content) {
        return joined(letters(name), little(content.length, 4), content);
    }

    private static byte[] little(int number, int bytes) {
        byte[] written = new byte[bytes];
        for (int i = 0; i < Math.min(bytes, Integer.BYTES); i++) {
            written[i] = (byte) (number >> (i * Byte.SIZE));
        }
        return written;
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        Arrays.stream(parts).forEach(all::writeBytes);
        return all.toByteArray();
    }

    private static byte[] letters(String name) {
        return name.getBytes(StandardCharsets.US_ASCII);
    }
}
