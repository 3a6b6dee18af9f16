package org.ionohaul.trial;

import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;

/**
 * A reception with a stronger signal.
 *
 * @param original what is heard otherwise
 * @param factor by what the signal's power is multiplied, positive
 */
record Raised(Reception original, double factor) implements DerivedReception {
    @Override
    public void powers(long atNanos, double[] signal, double[] disturbance) {
        original.powers(atNanos, signal, disturbance);
        for (int band = 0; band < signal.length; band++) {
            signal[band] *= factor;
        }
    }

    @Override
    public double meanSignal(long atNanos) {
        return factor * original.meanSignal(atNanos);
    }
}
