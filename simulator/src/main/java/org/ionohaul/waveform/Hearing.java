package org.ionohaul.waveform;

import org.ionohaul.channel.Decibels;
import org.ionohaul.channel.Reception;

/**
 * What a receiver makes of the SINR in 3 kHz: the ratio of symbol energy to noise density after its own shortcomings.
 *
 * @param meanPower mean over peak power of the emission, above 0, at most 1
 * @param energyPerSinr Es/N0 for each unit of SINR in 3 kHz
 * @param gap by what the receiver's gap divides Es/N0, as a factor
 * @param separation how far neighbouring symbols lie apart, see {@link Modulation#separation()}
 * @param fillsBand whether each symbol fills the band, see {@link Coding#fillsBand()}
 * @param equaliser how the echoes of such symbols are undone; of others {@link Equaliser#BY_PARTS}
 * @param distortion what the receiver adds to the noise
 */
record Hearing(
        double meanPower,
        double energyPerSinr,
        double gap,
        double separation,
        boolean fillsBand,
        Equaliser equaliser,
        Distortion distortion) {
    private static final Distortion NO_DISTORTION = new Distortion(new Receiver(99, 0, 0, 900), 1e-9);

    static Hearing of(FrameShape frame, Emission emission) {
        double meanPower = Decibels.toRatio(-emission.crestFactorDb());
        if (frame instanceof ModelledFrame modelled) {
            double energy =
                    meanPower * Reception.NOISE_BANDWIDTH_HZ / modelled.coding().symbolRateBd();
            Receiver receiver = modelled.receiver();
            Distortion distortion = new Distortion(receiver, modelled.coding().symbolSeconds());
            return new Hearing(
                    meanPower,
                    energy,
                    Decibels.toRatio(-receiver.gapDb()),
                    modelled.coding().modulation().separation(),
                    modelled.coding().fillsBand(),
                    modelled.coding().fillsBand() ? receiver.equaliser() : Equaliser.BY_PARTS,
                    distortion);
        }
        // The measurements tell the SNR in 3 kHz, and have the receiver's shortcomings in them.
        return new Hearing(
                meanPower, meanPower, 1, Modulation.QPSK.separation(), true, Equaliser.BY_PARTS, NO_DISTORTION);
    }

    /**
     * Returns what it makes of a path.
     *
     * @param late share of the mean power that comes too late: lost, and heard as noise
     * @param motion what changes of the path cost, over the mean power
     */
    OnPath on(double late, double motion) {
        return new OnPath(
                gap * energyPerSinr * (1 - late), energyPerSinr * distortion.atRest(), energyPerSinr * (late + motion));
    }

    /**
     * The same on one path.
     *
     * @param energy Es/N0 that counts for each unit of SINR
     * @param ofSignal what it adds to the noise for each unit of the signal's power
     * @param ofPath what it adds to the noise for each unit of what that would be if the path did not fade
     */
    record OnPath(double energy, double ofSignal, double ofPath) {
        /** Returns the noise that counts; powers as those of {@link Reception#powers}. */
        double noise(double signal, double unfaded, double noise) {
            return noise + ofSignal * signal + ofPath * unfaded;
        }

        /** Returns the Es/N0 that counts, by the noise that does. */
        double esN0(double signal, double noise) {
            return energy * signal / noise;
        }
    }
}
