package org.ionohaul.waveform;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.Reception;

/**
 * A reception whose SINR the test dictates.
 *
 * @param bands linear SINR in 3 kHz of each sub-band at an instant
 * @param asked receives every instant that was asked for
 */
record ScriptedReception(
        int subBands,
        Bands bands,
        long steadyNanos,
        double dopplerSpreadHz,
        double delaySpreadSeconds,
        List<Long> asked)
        implements Reception {
    /** What is heard at an instant. */
    interface Bands {
        double sinr(long atNanos, int band);
    }

    /** Returns a path that changes as told, without Doppler spread or delay spread. */
    static ScriptedReception of(int subBands, long steadyNanos, Bands bands) {
        return new ScriptedReception(subBands, bands, steadyNanos, 0, 0, new ArrayList<>());
    }

    @Override
    public void sinr(long atNanos, double[] sinr) {
        asked.add(atNanos);
        for (int band = 0; band < subBands; band++) {
            sinr[band] = bands.sinr(atNanos, band);
        }
    }
}
