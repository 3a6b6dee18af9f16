package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.DeadlineChance;
import org.ionohaul.analysis.ModeSummary;
import org.ionohaul.rendering.TimeScale;
import org.ionohaul.rendering.TimeText;

/**
 * A picture for a terminal: a line a mode over a common axis of time, with 1, 5 and 9 where 1, 5 and 9 of 10 trials
 * are through, and upright bars at the deadlines.
 */
final class TimeStrip {
    private static final int MOST_MARKS = 7;
    private static final char DEADLINE = '|';
    /** Room for the last label with its unit. */
    private static final int LAST_LABEL = 11;

    private final List<ModeSummary> modes;
    private final TimeScale scale;
    private final int nameWidth;
    private final int axisWidth;

    /**
     * Prepares the picture.
     *
     * @param modes the modes
     * @param scale the axis
     * @param mostCharacters longest line allowed
     */
    TimeStrip(List<ModeSummary> modes, TimeScale scale, int mostCharacters) {
        this.modes = modes;
        this.scale = scale;
        this.nameWidth =
                modes.stream().mapToInt(it -> it.mode().title().length()).max().orElse(0) + 4;
        int beyond = modes.stream().mapToInt(it -> beyond(it).length()).max().orElse(0);
        this.axisWidth = Math.max(20, mostCharacters - nameWidth - Math.max(LAST_LABEL, beyond));
    }

    /** Returns the lines. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        modes.forEach(mode -> lines.add(line(mode)));
        lines.add(" ".repeat(nameWidth) + labels());
        return lines;
    }

    private String line(ModeSummary mode) {
        char[] axis = " ".repeat(axisWidth).toCharArray();
        double from = mode.tenthSeconds().value();
        double to = mode.ninthSeconds().value();
        if (Double.isFinite(from)) {
            for (int i = column(from); i <= column(Math.min(to, scale.endSeconds())); i++) {
                axis[i] = '-';
            }
        }
        mode.deadlines().stream().mapToDouble(DeadlineChance::deadlineSeconds).forEach(it -> put(axis, it, DEADLINE));
        put(axis, from, '1');
        put(axis, mode.medianSeconds().value(), '5');
        put(axis, to, '9');
        String name = "  " + mode.mode().title();
        return (name + " ".repeat(nameWidth - name.length()) + new String(axis) + beyond(mode)).stripTrailing();
    }

    /** Returns the first of the marks that lies beyond the axis. */
    private String beyond(ModeSummary mode) {
        if (mode.tenthSeconds().value() > scale.endSeconds()) {
            return beyond("1", mode.tenthSeconds().value());
        }
        if (mode.medianSeconds().value() > scale.endSeconds()) {
            return beyond("5", mode.medianSeconds().value());
        }
        return mode.ninthSeconds().value() > scale.endSeconds()
                ? beyond("9", mode.ninthSeconds().value())
                : "";
    }

    private static String beyond(String mark, double seconds) {
        return "> " + mark + " " + (Double.isFinite(seconds) ? TimeText.length(seconds) : "never");
    }

    private String labels() {
        StringBuilder labels = new StringBuilder();
        for (double mark : scale.marksSeconds(MOST_MARKS)) {
            int column = column(mark);
            if (column >= labels.length()) {
                labels.append(" ".repeat(column - labels.length())).append(scale.label(mark));
            }
        }
        return labels.append(' ').append(scale.unit()).toString();
    }

    private void put(char[] axis, double seconds, char mark) {
        if (seconds <= scale.endSeconds()) {
            axis[column(seconds)] = mark;
        }
    }

    private int column(double seconds) {
        return (int) Math.round((axisWidth - 1) * scale.share(seconds));
    }
}
