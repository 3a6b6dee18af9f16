package org.ionohaul.scenario;

import java.util.List;
import org.ionohaul.limits.OutOfRange;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.StationTimes;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.session.SessionRules;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Emission;

/**
 * A mode as its file describes it: waveforms and protocol, compared as one.
 *
 * @param name the file's name without its ending: lower-case words with hyphens
 * @param title what people call it
 * @param about one or two sentences on what it is made for
 * @param emission what its signals have in common
 * @param dataRates overs that carry frames, one shape a data rate, data rate 1 (most robust) first
 * @param acknowledgement the acknowledgement burst
 * @param call the burst that dials, and its answer
 * @param control the burst of introductions, offers, polls and hang-up
 * @param arq how frames move
 * @param ratePolicy how the data rate is chosen
 * @param session how links open and close
 * @param processingSeconds how long the mode's equipment thinks before it answers, on top of the station's own times
 */
public record Mode(
        String name,
        String title,
        String about,
        Emission emission,
        List<BurstShape> dataRates,
        BurstShape acknowledgement,
        BurstShape call,
        BurstShape control,
        ArqRules arq,
        RatePolicyRules ratePolicy,
        SessionRules session,
        double processingSeconds) {
    /** Most data rates of a mode: a row of results counts them in one byte. */
    static final int MOST_DATA_RATES = 255;

    /** Copies the data rates and checks that there are some. */
    public Mode {
        dataRates = List.copyOf(dataRates);
        if (dataRates.isEmpty()) {
            throw new IllegalArgumentException("data rates must not be empty");
        }
        OutOfRange.unless(
                processingSeconds >= 0 && processingSeconds < 1e6,
                "processingSeconds",
                "must not be negative",
                processingSeconds);
    }

    /** Returns the times of a station that works this mode: its own, and what the mode's equipment thinks. */
    public StationTimes times(StationTimes own) {
        long processingNanos = Math.addExact(own.processingNanos(), Math.round(1e9 * processingSeconds));
        return new StationTimes(own.hangNanos(), own.relayNanos(), own.recoveryNanos(), processingNanos);
    }

    /** Returns how long an over may last at most, in seconds, unless one frame alone lasts longer. */
    public double longestOverSeconds() {
        return arq.longestOverNanos() / 1e9;
    }
}
