package org.ionohaul.channel;

import org.ionohaul.limits.OutOfRange;

/**
 * Level of a signal at the receiver's input from what an operator can know of a link.
 *
 * @param powerDbm peak envelope power at the transmitting antenna, in dBm
 * @param transmitGainDbi gain of the transmitting antenna towards the path, in dBi
 * @param receiveGainDbi gain of the receiving antenna towards the path, in dBi
 * @param frequencyHz carrier frequency, positive
 * @param slantMetres length of the path up to the ionosphere and down again, positive
 * @param lossesDb everything beyond spreading: absorption, ground reflections, polarisation, feeders; zero or more
 */
public record LinkBudget(
        double powerDbm,
        double transmitGainDbi,
        double receiveGainDbi,
        double frequencyHz,
        double slantMetres,
        double lossesDb) {
    /** Checks every value. */
    public LinkBudget {
        requireLevel("powerDbm", powerDbm);
        requireLevel("transmitGainDbi", transmitGainDbi);
        requireLevel("receiveGainDbi", receiveGainDbi);
        OutOfRange.unless(frequencyHz > 0 && frequencyHz < 1e12, "frequencyHz", "must be positive", frequencyHz);
        OutOfRange.unless(slantMetres > 0 && slantMetres < 1e9, "slantMetres", "must be positive", slantMetres);
        OutOfRange.unless(lossesDb >= 0 && lossesDb < 400, "lossesDb", "must be from 0 to 400", lossesDb);
    }

    /** Returns a power of so many watts in dBm. */
    public static double dbmOfWatts(double watts) {
        return Decibels.ofRatio(1000 * watts);
    }

    /**
     * Returns the basic transmission loss in dB: 32.45 + 20 log10(f / MHz) + 20 log10(p' / km) + losses (ITU-R P.533,
     * equation 18).
     */
    public double lossDb() {
        return 32.45 + 20 * Math.log10(frequencyHz / 1e6) + 20 * Math.log10(slantMetres / 1e3) + lossesDb;
    }

    /**
     * Returns the median power at the receiver's input, in dBm: power plus gains minus loss. Going over field strength
     * with the rounded constants of P.533 (equations 17 and 43) gives 0.60 dB less.
     */
    public double receivedDbm() {
        return powerDbm + transmitGainDbi + receiveGainDbi - lossDb();
    }

    private static void requireLevel(String name, double level) {
        OutOfRange.unless(Math.abs(level) < 200, name, "must be within 200 dB", level);
    }
}
