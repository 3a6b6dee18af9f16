package org.ionohaul.rendering;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Turns the names of scenarios, transfers and modes into one name for a folder of results, which lies where it is put and
 * nowhere else, on every system. Letters, digits, points, hyphens and underscores stand as they are; where anything had to
 * be changed, a mark that depends on the names themselves keeps different names apart.
 */
public final class FolderName {
    private static final Pattern UNSAFE = Pattern.compile("[^\\p{L}\\p{N}._-]");
    /** Hidden, "." and "..", or refused by Windows, with or without an ending. */
    private static final Pattern RESERVED =
            Pattern.compile("(?i)(\\..*|.*\\.|(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?)");
    /** File systems hold 255 bytes; temporary names beside it are longer than this one. */
    private static final int LONGEST_BYTES = 180;

    private static final int MARK_DIGITS = 8;

    private FolderName() {}

    /** Returns the name that is made of some others, joined by hyphens. */
    public static String of(Object... names) {
        StringBuilder joined = new StringBuilder();
        for (Object name : names) {
            joined.append(joined.isEmpty() ? "" : "-").append(name);
        }
        String wanted = joined.toString();
        String safe = UNSAFE.matcher(wanted).replaceAll("_");
        safe = safe.substring(0, Math.min(safe.length(), LONGEST_BYTES));
        if (RESERVED.matcher(safe).matches()) {
            safe = "_" + safe + "_";
        }
        while (safe.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
            safe = safe.substring(0, safe.offsetByCodePoints(safe.length(), -1));
        }
        return safe.equals(wanted) ? wanted : safe + "~" + mark(wanted);
    }

    private static String mark(String wanted) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(wanted.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, MARK_DIGITS).toLowerCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
