package org.ionohaul.waveform;

import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;

/**
 * What is lost where the frequencies of two stations differ by more than a receiver finds and corrects by itself. What is left
 * after its correction turns every phase at that rate: while a preamble is correlated, from one known symbol to the next, and
 * while a symbol is added up.
 *
 * @param energyPerSinr Es/N0 for each unit of SINR in 3 kHz
 * @param distortion the receiver
 */
record Mistuning(double energyPerSinr, Distortion distortion) {
    /** Returns by how much the frequencies differ beyond what the receiver corrects, in Hz, zero or more. */
    double excessHz(Reception reception, long atNanos) {
        return Math.max(
                0,
                Math.abs(reception.frequencyErrorHz(atNanos))
                        - distortion.receiver().frequencyToleranceHz());
    }

    /**
     * Returns what is left of the power of a signal that is added up coherently over a time: sinc^2 (frequency x time), the
     * transform of a rectangle.
     */
    static double coherentPower(double excessHz, double seconds) {
        double halfTurn = Math.PI * excessHz * seconds;
        return halfTurn == 0 ? 1 : Math.pow(Math.sin(halfTurn) / halfTurn, 2);
    }

    /**
     * Returns the mean square of what a straight line between two looks misses of a phasor that turns by u radians between
     * them: 5/3 + cos(u) / 3 - 4 (1 - cos u) / u^2, for small u u^4 / 120. What {@link Distortion#missedByLines} is for a
     * spectrum, this is for a single line.
     */
    static double missedByLines(double u) {
        if (Math.abs(u) < 0.1) {
            return u * u * u * u / 120;
        }
        return 5.0 / 3 + Math.cos(u) / 3 - 4 * (1 - Math.cos(u)) / (u * u);
    }

    /**
     * Returns how a receiver hears a burst that lies between two instants; the reception itself if it corrects all of the
     * difference, which runs evenly from the one to the other.
     */
    Reception heard(Reception reception, long fromNanos, long toNanos) {
        boolean isCorrected = excessHz(reception, fromNanos) == 0 && excessHz(reception, toNanos) == 0;
        return isCorrected ? reception : new Turning(reception, this);
    }

    /** A reception whose symbols turn while they last: part of their power is heard as noise. */
    private record Turning(Reception original, Mistuning mistuning) implements DerivedReception {
        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            original.powers(atNanos, signal, disturbance);
            double excessHz = mistuning.excessHz(original, atNanos);
            Distortion distortion = mistuning.distortion;
            double turn = 2 * Math.PI * excessHz * distortion.receiver().trackingSeconds();
            // From half a turn on nobody can tell which way round it was.
            double left = turn < Math.PI ? coherentPower(excessHz, distortion.symbolSeconds()) : 0;
            double missed = Distortion.OVER_STRAIGHT_LINES * missedByLines(turn);
            for (int band = 0; band < signal.length; band++) {
                disturbance[band] += mistuning.energyPerSinr * signal[band] * (1 - left + missed);
                signal[band] *= left;
            }
        }
    }
}
