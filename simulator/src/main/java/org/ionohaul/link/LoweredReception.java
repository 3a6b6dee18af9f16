package org.ionohaul.link;

import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.Reception;

/**
 * How a burst is heard whose sender lowers its power on the way: the signal of one that does not, weaker from an instant on.
 * Does not change what noise, other stations and the path do.
 *
 * @param original how it were heard at full power
 * @param fromNanos from when on the signal is weaker
 * @param power what is left of the signal's power then, from 0 to 1
 */
record LoweredReception(Reception original, long fromNanos, double power) implements DerivedReception {
    /**
     * Returns how a burst is heard.
     *
     * @param full how it were heard at full power
     * @param arrivalNanos when its first symbol arrives
     */
    static Reception of(Reception full, Burst burst, long arrivalNanos) {
        return burst.isLowered()
                ? new LoweredReception(full, arrivalNanos + burst.fullPowerNanos(), burst.loweredPower())
                : full;
    }

    @Override
    public void powers(long atNanos, double[] signal, double[] disturbance) {
        original.powers(atNanos, signal, disturbance);
        double left = left(atNanos);
        for (int band = 0; band < signal.length; band++) {
            signal[band] *= left;
        }
    }

    @Override
    public double meanSignal(long atNanos) {
        return left(atNanos) * original.meanSignal(atNanos);
    }

    private double left(long atNanos) {
        return atNanos < fromNanos ? 1 : power;
    }
}
