package org.ionohaul.waveform;

import java.util.function.DoubleUnaryOperator;

/** Builds the waveform that a mode's numbers describe. */
public final class Waveforms {
    private Waveforms() {}

    /**
     * Returns the waveform of one kind of burst.
     *
     * <p>Uncoded frames have no further code bits to send, so under incremental redundancy their copies are added as
     * under chase combining.
     *
     * @param burst how the burst is put on the air
     * @param emission what the mode's signals have in common; receptions are to be asked for its passband
     * @param combining what the receiver does with copies of a frame
     * @return a waveform with working memory of its own, for one thread
     */
    public static Waveform of(BurstShape burst, Emission emission, Combining combining) {
        return new BurstWaveform(burst, emission, frameModel(burst.frame(), combining));
    }

    private static FrameModel frameModel(FrameShape frame, Combining combining) {
        if (frame.codeRate() == 1) {
            return uncoded(frame, combining != Combining.NONE);
        }
        InformationDensity density = CodedInformation.of(frame.modulation());
        NormalApproximation code = new NormalApproximation(frame.dataSymbols(), frame.informationBits());
        return switch (combining) {
            case NONE -> coded(density, code, false);
            case CHASE -> coded(density, code, true);
            case INCREMENTAL_REDUNDANCY -> new AccumulatedInformation(density, code);
        };
    }

    private static FrameModel coded(InformationDensity density, NormalApproximation code, boolean adds) {
        DoubleUnaryOperator success = esN0 -> code.successProbability(
                density.bits().at(esN0), density.dispersion().at(esN0));
        return new EffectiveSinr(density.bits(), success, adds);
    }

    private static FrameModel uncoded(FrameShape frame, boolean adds) {
        RatioTable survival = UncodedSurvival.of(frame.modulation());
        int bits = frame.informationBits();
        return new EffectiveSinr(survival, esN0 -> Math.exp(bits * survival.at(esN0)), adds);
    }
}
