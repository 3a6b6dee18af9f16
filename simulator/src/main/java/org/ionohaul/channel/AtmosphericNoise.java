package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Noise that crackles: static of thunderstorms near and far, in the shape of Middleton's class A. Crashes come and go by
 * themselves, a Poisson number of them under way at once; with m of them the noise is Gaussian with (m / A + G) / (1 + G)
 * times its mean power, A being the mean number (the impulsive index) and G what is always there over what the crashes
 * make in the mean (Middleton, "Statistical-physical models of electromagnetic interference", IEEE Trans. EMC 19(3),
 * 1977; from memory). The mean power is that of the noise floor: the same noise is louder in crashes and lower between.
 *
 * <p>ITU-R P.372 describes such noise by its voltage deviation Vd, the root mean square over the mean of its envelope: 1.05
 * dB for even noise, the more the more it crackles, and the more the wider the receiver. G follows from Vd and A.
 *
 * @param voltageDeviationDb Vd in a receiver 3 kHz wide, in dB, above 1.05
 * @param underWay mean number of crashes under way at once (impulsive index A), from 0.01 to 1
 * @param crashSeconds for how long a crash keeps its level, 0.1 ms or more
 */
public record AtmosphericNoise(double voltageDeviationDb, double underWay, double crashSeconds) {
    /** Vd of Gaussian noise, whose envelope is Rayleigh's: 10 log10(4 / pi) dB. */
    public static final double EVEN_DB = 10 * Math.log10(4 / Math.PI);

    /** Noise that does not crackle. */
    public static final AtmosphericNoise NONE = new AtmosphericNoise(EVEN_DB, 1, 1);

    private static final double SHORTEST_CRASH_SECONDS = 1e-4;
    private static final double LEAST_STEADY = 1e-6;
    private static final double MOST_STEADY = 1e6;

    /** Checks every value. */
    public AtmosphericNoise {
        OutOfRange.unless(underWay >= 0.01 && underWay <= 1, "underWay", "must be from 0.01 to 1", underWay);
        OutOfRange.unless(
                crashSeconds >= SHORTEST_CRASH_SECONDS && crashSeconds < 1e4,
                "crashSeconds",
                "must be 0.1 ms or more",
                crashSeconds);
        OutOfRange.unless(
                voltageDeviationDb >= EVEN_DB && voltageDeviationDb <= deviationDb(underWay, LEAST_STEADY),
                "voltageDeviationDb",
                "must be from 1.05 dB, even noise, to what so few or many crashes at once can make",
                voltageDeviationDb);
    }

    /** Returns whether the noise crackles at all. */
    public boolean isUneven() {
        return voltageDeviationDb > EVEN_DB;
    }

    /** Returns what a crash adds to the noise, over its mean power; zero for even noise. */
    double crashPower() {
        return isUneven() ? 1 / (underWay * (1 + steadyShare())) : 0;
    }

    /** Returns the noise between crashes over its mean power, from 0 to 1. */
    double between() {
        if (!isUneven()) {
            return 1;
        }
        double steady = steadyShare();
        return steady / (1 + steady);
    }

    /** Returns G, found by halving its logarithm: Vd falls as it grows. */
    private double steadyShare() {
        double low = Math.log(LEAST_STEADY);
        double high = Math.log(MOST_STEADY);
        for (int halving = 0; halving < 60; halving++) {
            double middle = (low + high) / 2;
            if (deviationDb(underWay, Math.exp(middle)) > voltageDeviationDb) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp((low + high) / 2);
    }

    /**
     * Returns Vd of class A noise, in dB: at each number of crashes the envelope is Rayleigh's, of mean root (pi / 4) of
     * its mean power.
     */
    private static double deviationDb(double underWay, double steady) {
        double probability = Math.exp(-underWay);
        double mean = 0;
        for (int crashes = 0; crashes < 200; crashes++) {
            double power = (crashes / underWay + steady) / (1 + steady);
            mean += probability * Math.sqrt(Math.PI / 4 * power);
            probability *= underWay / (crashes + 1);
        }
        return -20 * Math.log10(mean);
    }
}
