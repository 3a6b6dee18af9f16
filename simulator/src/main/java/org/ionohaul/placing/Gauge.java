package org.ionohaul.placing;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.Reading;

/**
 * A number read off a meter during a run that a scenario says something of.
 *
 * @param run the run
 * @param end where the meter stands
 * @param what what it shows
 * @param value what was read, corrected for how it was read: an SNR in dB, or a level in dBm
 * @param deviationDb standard deviation of its error, in dB, positive
 */
public record Gauge(LoggedRun run, End end, What what, double value, double deviationDb) {
    /** No reading is more exact than what is written in whole decibels. */
    private static final double LEAST_DEVIATION_DB = 0.5;

    /** What a meter shows. */
    public enum What {
        /** The signal-to-noise ratio in 3 kHz. */
        SNR,
        /** The other station's level. */
        SIGNAL,
        /** The noise in 3 kHz without it. */
        NOISE
    }

    /** Checks the deviation. */
    public Gauge {
        deviationDb = Math.max(LEAST_DEVIATION_DB, deviationDb);
    }

    /**
     * Returns what was read at an end. Signal and noise count each by itself where the scenario states both; elsewhere just
     * their difference does.
     *
     * @param hasLevels whether the scenario states both there
     */
    static List<Gauge> of(LoggedRun run, End end, boolean hasLevels) {
        List<Gauge> found = new ArrayList<>();
        EndReadings read = run.at(end);
        read.snr().ifPresent(it -> found.add(new Gauge(run, end, What.SNR, it.mean(), it.deviationDb())));
        if (hasLevels) {
            read.signal().ifPresent(it -> found.add(new Gauge(run, end, What.SIGNAL, it.mean(), it.deviationDb())));
            read.noise().ifPresent(it -> found.add(new Gauge(run, end, What.NOISE, it.mean(), it.deviationDb())));
        } else if (read.signal().isPresent() && read.noise().isPresent()) {
            Reading signal = read.signal().get();
            Reading noise = read.noise().get();
            found.add(new Gauge(
                    run,
                    end,
                    What.SNR,
                    signal.mean() - noise.mean(),
                    Math.hypot(signal.deviationDb(), noise.deviationDb())));
        }
        return found;
    }
}
