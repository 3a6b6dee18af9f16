package org.ionohaul.waveform;

/** What SNR a waveform needs on a steady path: the figure on a modem's data sheet. */
public final class SteadyNeed {
    private static final double LOWEST_DB = -60;
    private static final double HIGHEST_DB = 100;
    private static final double RESOLUTION_DB = 1e-6;

    private SteadyNeed() {}

    /**
     * Returns the SNR in 3 kHz, as a meter would show it (crest factor already lost), at which a frame is lost with the
     * given probability on a steady path in white noise.
     *
     * @param loss probability of losing a frame, above 0 and below 1
     * @return the need in dB; positive infinity when the frame is lost more often however strong the signal
     */
    public static double snrDb(Waveform waveform, double loss) {
        if (!(loss > 0 && loss < 1)) {
            throw new IllegalArgumentException("loss must be above 0 and below 1: " + loss);
        }
        if (lossAt(waveform, HIGHEST_DB) > loss) {
            return Double.POSITIVE_INFINITY;
        }
        double tooLow = LOWEST_DB;
        double enough = HIGHEST_DB;
        while (enough - tooLow > RESOLUTION_DB) {
            double middle = (tooLow + enough) / 2;
            if (lossAt(waveform, middle) > loss) {
                tooLow = middle;
            } else {
                enough = middle;
            }
        }
        return waveform.meanSnrDb(new SteadyReception(enough), 0, 1);
    }

    private static double lossAt(Waveform waveform, double snrDb) {
        return 1 - waveform.decodingProbability(waveform.evidence(new SteadyReception(snrDb), 0, 0, 1));
    }
}
