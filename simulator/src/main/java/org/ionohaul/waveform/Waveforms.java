package org.ionohaul.waveform;

import java.util.function.DoubleUnaryOperator;
import org.ionohaul.channel.Reception;

/** Builds the waveform that a mode's numbers describe. */
public final class Waveforms {
    private Waveforms() {}

    /**
     * Returns the waveform of one kind of burst.
     *
     * <p>Uncoded and measured frames have no further code bits to send, so under incremental redundancy their copies are
     * added as under chase combining.
     *
     * @param burst how the burst is put on the air
     * @param emission what the mode's signals have in common; receptions are to be asked for its passband
     * @param combining what the receiver does with copies of a frame
     * @return a waveform with working memory of its own, for one thread
     */
    public static Waveform of(BurstShape burst, Emission emission, Combining combining) {
        return of(plan(burst, emission, combining));
    }

    /** Returns a waveform with working memory of its own, for one thread. */
    public static Waveform of(WaveformPlan plan) {
        return new BurstWaveform(plan);
    }

    /**
     * Returns a waveform that answers as another one does, and remembers what that said of two receptions: for one thread, and for
     * as long as what it keeps may stay.
     */
    public static Waveform remembering(Waveform original, Reception first, Reception second) {
        return new RememberingWaveform(original, first, second);
    }

    /** Returns what is the same in all such waveforms, whoever works with them. */
    public static WaveformPlan plan(BurstShape burst, Emission emission, Combining combining) {
        return new WaveformPlan(burst, emission, frameModel(burst.frame(), combining), addsCopies(combining));
    }

    private static FrameModel frameModel(FrameShape frame, Combining combining) {
        if (frame instanceof ModelledFrame modelled) {
            return modelled(modelled, combining);
        }
        LossCurve curve = new LossCurve(((MeasuredFrame) frame).losses());
        return new EffectiveSinr(GaussianRatings.TABLE, curve::success, false, addsCopies(combining));
    }

    private static FrameModel modelled(ModelledFrame frame, Combining combining) {
        FrameModel perfect = frame.coding().isUncoded() ? uncoded(frame, combining) : coded(frame, combining);
        double passedShare = frame.check().passedShare();
        return passedShare > 0 ? new SummedFrame(perfect, passedShare) : perfect;
    }

    private static FrameModel coded(ModelledFrame frame, Combining combining) {
        InformationDensity density = CodedInformation.of(frame.coding().modulation());
        NormalApproximation code =
                new NormalApproximation(frame.coding().symbolsFor(frame.informationBits()), frame.informationBits());
        if (combining == Combining.INCREMENTAL_REDUNDANCY) {
            return new AccumulatedInformation(density, code);
        }
        DoubleUnaryOperator success = esN0 -> code.successProbability(
                density.bits().at(esN0), density.dispersion().at(esN0));
        return new EffectiveSinr(density.bits(), success, false, addsCopies(combining));
    }

    private static FrameModel uncoded(ModelledFrame frame, Combining combining) {
        RatioTable survival = UncodedSurvival.of(frame.coding().modulation());
        int bits = frame.informationBits();
        EffectiveSinr wholeFrame =
                new EffectiveSinr(survival, esN0 -> Math.exp(bits * survival.at(esN0)), true, addsCopies(combining));
        return switch (frame.check()) {
            case FOUR_OF_SEVEN -> {
                int characters = ConstantRatioCode.characters(bits);
                yield new CharacterBlock(
                        wholeFrame, bitErrorRate -> Math.pow(ConstantRatioCode.acceptance(bitErrorRate), characters));
            }
            case CONTROL_SIGNAL ->
                new CharacterBlock(
                        wholeFrame,
                        bitErrorRate ->
                                ConstantRatioCode.correct(bitErrorRate) + ConstantRatioCode.mistaken(bitErrorRate));
            default -> wholeFrame;
        };
    }

    private static boolean addsCopies(Combining combining) {
        return combining != Combining.NONE;
    }

    /** The rating of symbols in a frame of unknown make: the capacity of the Gaussian channel, in nats. */
    private static final class GaussianRatings {
        static final RatioTable TABLE = RatioTable.ofRising(0, Math::log1p);
    }
}
