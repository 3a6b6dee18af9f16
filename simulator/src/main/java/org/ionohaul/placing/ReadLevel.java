package org.ionohaul.placing;

import java.util.Optional;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.EndReadings;
import org.ionohaul.fieldlog.Reading;
import org.ionohaul.scenario.Levels;

/**
 * What the readings of a run say of the SNR at an end.
 *
 * @param snrDb median SNR in 3 kHz when the run began, in dB
 * @param deviationDb standard deviation of its error, in dB, zero or more
 */
record ReadLevel(double snrDb, double deviationDb) {
    /**
     * Returns what readings come to: an SNR that was read; else signal less noise, where one of the two may be the scenario's.
     * Empty if nothing was read, or just a level at an end of which the scenario states no levels.
     *
     * @param levels what the scenario states there, in the trial
     * @param risesDb by how much signal and noise lie above that when the run begins, in dB
     */
    static Optional<ReadLevel> of(EndReadings readings, Optional<Levels> levels, Rises risesDb) {
        if (readings.snr().isPresent()) {
            Reading snr = readings.snr().get();
            return Optional.of(new ReadLevel(snr.mean(), snr.deviationDb()));
        }
        if (readings.signal().isEmpty() && readings.noise().isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> signal =
                readings.signal().map(Reading::mean).or(() -> levels.map(it -> it.signalDbm() + risesDb.signalDb()));
        Optional<Double> noise =
                readings.noise().map(Reading::mean).or(() -> levels.map(it -> it.noiseDbm() + risesDb.noiseDb()));
        double deviationDb = Math.hypot(deviation(readings.signal()), deviation(readings.noise()));
        return signal.flatMap(s -> noise.map(n -> new ReadLevel(s - n, deviationDb)));
    }

    private static double deviation(Optional<Reading> reading) {
        return reading.map(Reading::deviationDb).orElse(0.0);
    }

    /**
     * By how much levels have risen since the scenario's clock.
     *
     * @param signalDb the path's trend, in dB
     * @param noiseDb the noise schedule of the end, in dB
     */
    record Rises(double signalDb, double noiseDb) {}

    /** Returns the number of an end among random streams. */
    static int element(End end) {
        return end == End.NEAR ? 0 : 1;
    }
}
