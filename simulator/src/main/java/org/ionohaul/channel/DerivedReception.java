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
    default void bursts(long fromNanos, long toNanos, NoiseBursts bursts) {
        original().bursts(fromNanos, toNanos, bursts);
    }

    @Override
    default double frequencyErrorHz(long atNanos) {
        return original().frequencyErrorHz(atNanos);
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
