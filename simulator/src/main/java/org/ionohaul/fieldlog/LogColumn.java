package org.ionohaul.fieldlog;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The columns of a field log, with what its manual says of them. */
public enum LogColumn {
    /** The day. */
    DATE("2031-03-14", "The day, year first (also 14.3.2031).", false),
    /** When send was pressed. */
    START("18:08", "Time of day when send was pressed; the scenario's clock if empty.", false),
    /** The mode. */
    MODE("brisk-comb", "The mode's file, without .toml.", true),
    /** Which way. */
    DIRECTION("upload", "upload: from the near end, which dials, to the far end; download: the other way.", true),
    /** Size of the file. */
    SIZE("38 kB", "Size of the file.", true),
    /** Size on the air. */
    ON_AIR("21 kB", "Size after compression, as it went on the air; if empty, that of the file.", false),
    /** What the run came to. */
    OUTCOME(
            "delivered",
            "delivered; delivered-not-closed (all is through, the session never closed); broken-off (an operator ended it"
                    + " before all was through); gave-up (the stations did).",
            true),
    /** Bytes through. */
    THROUGH("12 kB", "Of a run that was broken off or gave up: how much of what went on the air was through.", false),
    /** Time of the session. */
    SESSION_TIME(
            "14 min",
            "From pressing send to the end of the session: dialling and hang-up counted. Also 0:14:20 (h:mm:ss).",
            false),
    /** Time until delivered. */
    DELIVERED_AFTER("12 min 30 s", "From pressing send until the receiver held everything.", false),
    /** How finely times are noted. */
    ROUNDED(
            "1 min",
            "How finely both times are noted: \"1 min\" (the nearest), \"1 min up\" (a begun one counts), \"1 min down\"."
                    + " If empty, the smallest unit written.",
            false),
    /** SNR at the near end. */
    NEAR_SNR("9 dB", "SNR in 3 kHz read at the near end.", false),
    /** Signal at the near end. */
    NEAR_SIGNAL("S7", "The far station's level at the near end: a meter reading or dBm.", false),
    /** Noise at the near end. */
    NEAR_NOISE("S4", "The noise at the near end in 3 kHz: a meter reading or dBm.", false),
    /** How the near end's readings were taken. */
    NEAR_READ(
            "average ± 2 dB",
            "How signal and SNR were read there: average (over many fades), glance (one look) or peak (the highest swing in"
                    + " some ten fades); after ± the meter's own error, 3 dB if left out. If empty: average.",
            false),
    /** SNR at the far end. */
    FAR_SNR("9 dB", "As near-snr, at the far end.", false),
    /** Signal at the far end. */
    FAR_SIGNAL("S6", "As near-signal, at the far end.", false),
    /** Noise at the far end. */
    FAR_NOISE("S3", "As near-noise, at the far end.", false),
    /** How the far end's readings were taken. */
    FAR_READ("glance", "As near-read, at the far end.", false),
    /** Anything else. */
    REMARKS("rain, two lights went on", "Anything else.", false);

    private final String example;
    private final String meaning;
    private final boolean isNeeded;

    LogColumn(String example, String meaning, boolean isNeeded) {
        this.example = example;
        this.meaning = meaning;
        this.isNeeded = isNeeded;
    }

    /** Returns its head as it stands in a log. */
    public String head() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns what a cell of it may say. */
    public String example() {
        return example;
    }

    /** Returns what it means. */
    public String meaning() {
        return meaning;
    }

    /** Returns whether every run must have it. */
    public boolean isNeeded() {
        return isNeeded;
    }

    static List<String> heads() {
        return Stream.of(values()).map(LogColumn::head).toList();
    }

    /** Returns the column that somebody means by a head: capitals, spaces and underscores make no difference. */
    static Optional<LogColumn> named(String head) {
        String plain = LogCells.plain(head);
        return Stream.of(values()).filter(it -> it.head().equals(plain)).findFirst();
    }
}
