package org.ionohaul.link;

import java.util.List;
import org.ionohaul.waveform.Waveform;

/**
 * The bursts that a mode can put on the air.
 *
 * @param dataRates overs that carry frames, one waveform a data rate, data rate 1 (most robust) first; at least one, each
 *     with a payload
 * @param acknowledgement the acknowledgement burst
 * @param call the burst that dials, and its answer
 * @param control the burst of introductions, offers, polls and hang-up
 */
public record Signals(List<Waveform> dataRates, Waveform acknowledgement, Waveform call, Waveform control) {
    /** Copies the list and checks that every data rate carries bytes. */
    public Signals {
        dataRates = List.copyOf(dataRates);
        if (dataRates.isEmpty()) {
            throw new IllegalArgumentException("data rates must not be empty");
        }
        for (Waveform dataRate : dataRates) {
            if (dataRate.payloadBytes() < 1) {
                throw new IllegalArgumentException("a data rate must carry at least 1 byte a frame: " + dataRates);
            }
        }
    }

    /** Returns the number of data rates, 1 or more. */
    public int dataRateCount() {
        return dataRates.size();
    }

    /** Returns the waveform of a data rate, counted from 1. */
    public Waveform dataRate(int dataRate) {
        return dataRates.get(dataRate - 1);
    }

    /**
     * Returns the waveform of a burst.
     *
     * @param message what it says
     * @param dataRate its data rate, counted from 1; used only by overs
     */
    public Waveform of(Message message, int dataRate) {
        return switch (message) {
            case CALL, CALL_ANSWER -> call;
            case ACKNOWLEDGEMENT -> acknowledgement;
            case OVER -> dataRate(dataRate);
            default -> control;
        };
    }

    /** Returns the length of the preamble of an over, in nanoseconds, by its data rate, counted from 1. */
    public long preambleNanos(int dataRate) {
        return dataRate(dataRate).preambleNanos();
    }

    /** Returns how long a burst is on the air, in nanoseconds, if it carries just one frame. */
    public long singleNanos(Message message) {
        return of(message, 1).burstNanos(1);
    }
}
