package org.ionohaul.trial;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.channel.SkyWatch;
import org.ionohaul.scenario.Mode;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;

/**
 * What a data rate of a mode needs on a steady path, on the scale on which scenarios state SNR: where one lone frame in ten
 * is lost because its burst is not found or it is not decoded.
 *
 * @param mode the mode
 * @param dataRate which data rate, from 1
 * @param carrierSnrDb SNR in 3 kHz of a full-power carrier, in dB; infinite if more frames are lost at any SNR
 */
public record SteadyNeed(Mode mode, int dataRate, double carrierSnrDb) {
    /** The share of frames that is lost at the need. */
    public static final double LOSS = 0.1;

    /** A steady path is alike at every instant, whatever the seed. */
    private static final int ONE_BURST = 1;

    private static final long ANY_SEED = 1;

    /** Returns the needs of a mode's data rates, data rate 1 first. */
    public static List<SteadyNeed> of(Mode mode) {
        FadingSkies steady =
                new FadingSkies(FadingCondition.FLAT.paths(), mode.emission().passband(), ONE_BURST, ANY_SEED);
        return IntStream.rangeClosed(1, mode.dataRates().size())
                .mapToObj(dataRate ->
                        new SteadyNeed(mode, dataRate, new LossOnPath(waveform(mode, dataRate), steady).needDb(LOSS)))
                .toList();
    }

    private static Waveform waveform(Mode mode, int dataRate) {
        return Waveforms.of(
                mode.dataRates().get(dataRate - 1), mode.emission(), mode.arq().combining());
    }

    /** Returns the share of the time in which an end has less, from 0 to 1. */
    public double shareWithLess(SkyWatch watch) {
        return watch.shareBelow(carrierSnrDb);
    }
}
