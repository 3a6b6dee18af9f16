package org.ionohaul.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The columns of a series of readings, with what its manual says of them. */
enum SeriesColumn {
    /** When. */
    TIME(
            "18:05",
            "Time of day (also 18:05:30, or with the day: 2031-03-14 18:05), or a time after pressing send (\"20 min\"). Each"
                    + " later than the one before; after 23:59 comes the next day."),
    /** The SNR. */
    SNR("14 dB", "Mean SNR in 3 kHz at this end, without other stations."),
    /** The signal. */
    SIGNAL("S7", "In place of snr: how strong the other station's steady carrier is, a meter reading or dBm."),
    /** The noise. */
    NOISE("-103 dBm", "The noise in 3 kHz without other stations, a meter reading or dBm; beside signal or alone."),
    /** Anything else. */
    REMARKS("lamps went on", "Anything else.");

    private static final Pattern HEAD = Pattern.compile("(\\p{Alpha}+)\\W*(db|dbm|s)?\\W*", Pattern.CASE_INSENSITIVE);

    private final String example;
    private final String meaning;

    SeriesColumn(String example, String meaning) {
        this.example = example;
        this.meaning = meaning;
    }

    /** Returns its head as it stands in a file. */
    String head() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns what a cell of it may say. */
    String example() {
        return example;
    }

    /** Returns what it means. */
    String meaning() {
        return meaning;
    }

    static List<String> heads() {
        return Stream.of(values()).map(SeriesColumn::head).toList();
    }

    /**
     * A head as somebody wrote it.
     *
     * @param column the column
     * @param unit the unit of its numbers, in small letters; empty if it stands in each cell
     */
    record Head(SeriesColumn column, String unit) {
        /** Returns what is meant by {@code snr}, {@code Signal (dBm)} or {@code noise S}; empty if there is no such column. */
        static Optional<Head> of(String written) {
            Matcher parts = HEAD.matcher(written.strip());
            return Stream.of(values())
                    .filter(it ->
                            parts.matches() && it.head().equals(parts.group(1).toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .map(it -> new Head(
                            it, Optional.ofNullable(parts.group(2)).orElse("").toLowerCase(Locale.ROOT)));
        }

        /** Returns a cell with its unit. */
        String withUnit(String cell) {
            boolean isBare = cell.matches("[-+−]?[\\d.,]+");
            if (!isBare || unit.isEmpty()) {
                return cell;
            }
            return unit.equals("s") ? "S" + cell : cell + (unit.equals("db") ? " dB" : " dBm");
        }
    }
}
