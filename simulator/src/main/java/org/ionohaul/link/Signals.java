package org.ionohaul.link;

import java.util.List;
import org.ionohaul.waveform.Waveform;

/**
 * The bursts that a mode can put on the air.
 *
 * @param levels overs that carry frames, one waveform a speed level, level 1 (most robust) first; at least one, each
 *     with a payload
 * @param acknowledgement the acknowledgement burst
 * @param call the burst that dials, and its answer
 * @param control the burst of introductions, offers, polls and hang-up
 */
public record Signals(List<Waveform> levels, Waveform acknowledgement, Waveform call, Waveform control) {
    /** Copies the list and checks that every level carries bytes. */
    public Signals {
        levels = List.copyOf(levels);
        if (levels.isEmpty()) {
            throw new IllegalArgumentException("levels must not be empty");
        }
        for (Waveform level : levels) {
            if (level.payloadBytes() < 1) {
                throw new IllegalArgumentException("a level must carry at least 1 byte a frame: " + levels);
            }
        }
    }

    /** Returns the number of speed levels, 1 or more. */
    public int levelCount() {
        return levels.size();
    }

    /** Returns the waveform of a speed level, counted from 1. */
    public Waveform level(int level) {
        return levels.get(level - 1);
    }

    /**
     * Returns the waveform of a burst.
     *
     * @param message what it says
     * @param level its speed level, counted from 1; used only by overs
     */
    public Waveform of(Message message, int level) {
        return switch (message) {
            case CALL, CALL_ANSWER -> call;
            case ACKNOWLEDGEMENT -> acknowledgement;
            case OVER -> level(level);
            default -> control;
        };
    }

    /** Returns the length of the preamble of an over, in nanoseconds, by its speed level, counted from 1. */
    public long preambleNanos(int level) {
        return level(level).preambleNanos();
    }

    /** Returns how long a burst is on the air, in nanoseconds, if it carries just one frame. */
    public long singleNanos(Message message) {
        return of(message, 1).burstNanos(1);
    }
}
