package org.ionohaul.link;

import java.util.Arrays;
import org.ionohaul.channel.Reception;

/** A path that neither fades nor spreads, at a fixed SNR in 3 kHz: the test bench. */
final class SteadyReception implements Reception {
    private final double ratio;

    SteadyReception(double snrDb) {
        ratio = Math.pow(10, snrDb / 10);
    }

    @Override
    public int subBands() {
        return 1;
    }

    @Override
    public void sinr(long atNanos, double[] sinr) {
        Arrays.fill(sinr, ratio);
    }

    @Override
    public long steadyNanos() {
        return Long.MAX_VALUE;
    }

    @Override
    public double dopplerSpreadHz() {
        return 0;
    }

    @Override
    public double delaySpreadSeconds() {
        return 0;
    }
}
