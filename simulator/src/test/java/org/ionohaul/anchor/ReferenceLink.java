package org.ionohaul.anchor;

import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Excision;
import org.ionohaul.waveform.FrontEnd;
import org.ionohaul.waveform.ImpulseDefence;
import org.ionohaul.waveform.Modulation;

/** A modulator and its receiver, at one sample a symbol or chip. */
interface ReferenceLink {
    /** Samples a second, which is also the bandwidth. */
    double SAMPLE_RATE = 2400;

    /** Seed of known symbols. */
    long KNOWN_SEED = 133_171;

    String name();

    Mapping mapping();

    /** Returns how many data symbols a frame has. */
    int dataSymbols();

    /** Returns how many samples a frame lasts. */
    int samples();

    /** Returns the seconds between the receiver's looks at known symbols. */
    double trackingSeconds();

    /** Returns the longest delay that it copes with, in seconds. */
    double toleranceSeconds();

    /** Returns over how many carriers symbols are spread. */
    int carriers();

    /** Returns the signal that carries the code bits, of mean power 1. */
    Signal modulate(int[] bits);

    /** Returns of each code bit the logarithm of its odds, 0 over 1. */
    double[] soften(Heard heard, Tracking tracking);

    /** Returns how many information bits a frame carries. */
    default int informationBits() {
        return dataSymbols() * mapping().bits() / 2 - ConvolutionalCode.TAIL;
    }

    /** Returns the means of this receiver: several carriers each count by their own noise; its blanker if it is on. */
    default FrontEnd frontEnd(boolean isBlanked) {
        Excision excision = carriers() > 1 ? Excision.WEIGHTING : Excision.NONE;
        return new FrontEnd(
                excision,
                isBlanked ? ImpulseDefence.BLANKER : ImpulseDefence.NONE,
                Heard.BLANKED_OVER_MEAN_DB + Heard.MEDIAN_RAISED_DB);
    }

    /** Returns the same in the model's terms. */
    default Coding coding() {
        Modulation modulation = mapping() == Mapping.QPSK ? Modulation.QPSK : Modulation.QAM16;
        return new Coding(modulation, carriers(), SAMPLE_RATE, 0.5);
    }
}
