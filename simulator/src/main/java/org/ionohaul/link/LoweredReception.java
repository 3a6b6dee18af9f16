package org.ionohaul.link;

import org.ionohaul.channel.Reception;

/**
 * How a burst is heard whose sender lowers its power on the way: the signal of one that does not, weaker from an instant on.
 * Does not change what noise, other stations and the path do.
 */
final class LoweredReception implements Reception {
    private final Reception full;
    private final long fromNanos;
    private final double power;

    private LoweredReception(Reception full, long fromNanos, double power) {
        this.full = full;
        this.fromNanos = fromNanos;
        this.power = power;
    }

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

    private double power(long atNanos) {
        return atNanos < fromNanos ? 1 : power;
    }

    @Override
    public int subBands() {
        return full.subBands();
    }

    @Override
    public void powers(long atNanos, double[] signal, double[] disturbance) {
        full.powers(atNanos, signal, disturbance);
        for (int band = 0; band < signal.length; band++) {
            signal[band] *= power(atNanos);
        }
    }

    @Override
    public long steadyNanos() {
        return full.steadyNanos();
    }

    @Override
    public double meanSignal(long atNanos) {
        return power(atNanos) * full.meanSignal(atNanos);
    }

    @Override
    public long noiseSteadyNanos() {
        return full.noiseSteadyNanos();
    }

    @Override
    public double dopplerSpreadHz() {
        return full.dopplerSpreadHz();
    }

    @Override
    public double shareBeyond(double reachSeconds, double symbolSeconds) {
        return full.shareBeyond(reachSeconds, symbolSeconds);
    }
}
