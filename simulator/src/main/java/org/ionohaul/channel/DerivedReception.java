package org.ionohaul.channel;

/** A reception that hears what another hears, but for what its class answers differently. */
public interface DerivedReception extends Reception {
    /** Returns the reception that answers whatever is not answered differently. */
    Reception original();

    @Override
    default int subBands() {
        return original().subBands();
    }

    @Override
    default void powers(long atNanos, double[] signal, double[] disturbance) {
        original().powers(atNanos, signal, disturbance);
    }

    @Override
    default long steadyNanos() {
        return original().steadyNanos();
    }

    @Override
    default double meanSignal(long atNanos) {
        return original().meanSignal(atNanos);
    }

    @Override
    default long noiseSteadyNanos() {
        return original().noiseSteadyNanos();
    }

    @Override
    default double dopplerSpreadHz() {
        return original().dopplerSpreadHz();
    }

    @Override
    default double shareBeyond(double reachSeconds, double symbolSeconds) {
        return original().shareBeyond(reachSeconds, symbolSeconds);
    }
}
