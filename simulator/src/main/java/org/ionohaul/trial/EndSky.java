package org.ionohaul.trial;

import org.ionohaul.channel.End;
import org.ionohaul.channel.Passband;
import org.ionohaul.channel.Reception;
import org.ionohaul.channel.SinrMeter;
import org.ionohaul.channel.Sky;
import org.ionohaul.statistics.OrderedSample;

/**
 * What one end's sky comes to over a while, in three numbers that anyone with a meter could have written down.
 *
 * @param middleSinrDb SINR of a full-power carrier in 3 kHz that half of the time is above, in dB
 * @param worstTenthSinrDb the SINR that nine tenths of the time are above, in dB
 * @param occupiedShare share of the time that other stations together are stronger than the noise floor, from 0 to 1
 */
public record EndSky(double middleSinrDb, double worstTenthSinrDb, double occupiedShare) {
    /** Even looks at a while; with so many, the middle of Rayleigh fading comes out to about half a decibel. */
    private static final int LOOKS = 200;

    static EndSky of(Sky sky, End end, double lengthSeconds) {
        Reception carrier = sky.reception(end, new Passband(Reception.NOISE_BANDWIDTH_HZ, 1));
        SinrMeter meter = new SinrMeter();
        double[] decibels = new double[LOOKS];
        int occupied = 0;
        for (int look = 0; look < LOOKS; look++) {
            long atNanos = Math.round(1e9 * lengthSeconds * (look + 0.5) / LOOKS);
            meter.listen(carrier, atNanos);
            decibels[look] = 10 * Math.log10(meter.sinr(0));
            occupied += sky.isOccupied(end, atNanos, 0) ? 1 : 0;
        }
        OrderedSample seen = OrderedSample.of(decibels);
        return new EndSky(seen.quantile(0.5), seen.quantile(0.1), (double) occupied / LOOKS);
    }
}
