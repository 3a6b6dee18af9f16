package org.ionohaul.waveform;

import org.jspecify.annotations.Nullable;

/** All that is fixed about one kind of burst: worked out once, shared by all threads, each of which has a waveform of its own made. */
public final class WaveformPlan {
    private final BurstShape shape;
    private final Emission emission;
    private final Hearing hearing;
    private final FrameModel frameModel;
    private final boolean keepsLost;
    private volatile @Nullable Bars bars;
    private volatile @Nullable Leakage leakage;

    WaveformPlan(BurstShape shape, Emission emission, FrameModel frameModel, boolean keepsLost) {
        this.shape = shape;
        this.emission = emission;
        this.hearing = Hearing.of(shape.frame(), emission);
        this.frameModel = frameModel;
        this.keepsLost = keepsLost;
    }

    BurstShape shape() {
        return shape;
    }

    Hearing hearing() {
        return hearing;
    }

    /** Returns the length of a symbol in seconds, zero if it is not known: of a frame whose loss was measured. */
    double symbolSeconds() {
        return shape.frame() instanceof ModelledFrame modelled
                ? modelled.coding().symbolSeconds()
                : 0;
    }

    /** Returns what carriers hear of interferers elsewhere in a band that is cut into so many parts: by its paths, mostly always the same. */
    Leakage leakage(int subBands) {
        Leakage known = leakage;
        if (known == null || known.subBands() != subBands) {
            known = new Leakage(subBands, emission.bandwidthHz() / subBands, symbolSeconds());
            leakage = known;
        }
        return known;
    }

    FrameModel frameModel() {
        return frameModel;
    }

    /** Returns whether the evidence of lost frames is kept, to be combined with that of their next copies. */
    boolean keepsLost() {
        return keepsLost;
    }

    /** Returns the frames' bars, worked out when first asked for: many plans are made just to tell airtimes. */
    Bars bars() {
        Bars known = bars;
        if (known == null) {
            known = new Bars(frameModel);
            bars = known;
        }
        return known;
    }
}
