package org.ionohaul.waveform;

/**
 * The information density of every modulation, worked out at first use and then shared by all threads: each table is the
 * only constant of its holder class, which the virtual machine initialises once.
 */
final class CodedInformation {
    private CodedInformation() {}

    /**
     * Returns the information density of a modulation.
     *
     * <p>Differential detection of two phases equals two orthogonal tones with twice the energy (the pair of symbols
     * spans both). Of four phases it is taken as coherent detection with the noise of two symbols and their product:
     * Es/N0 g becomes g^2 / (1 + 2 g), some tenths of a dB too pessimistic at high SNR.
     */
    static InformationDensity of(Modulation modulation) {
        return switch (modulation) {
            case BPSK -> Bpsk.DENSITY;
            case QPSK -> Qpsk.DENSITY;
            case PSK8 -> Psk8.DENSITY;
            case QAM16 -> Qam16.DENSITY;
            case QAM32 -> Qam32.DENSITY;
            case QAM64 -> Qam64.DENSITY;
            case DBPSK -> Dbpsk.DENSITY;
            case DQPSK -> Dqpsk.DENSITY;
            case FSK2_COHERENT -> Fsk2Coherent.DENSITY;
            case FSK2 -> Fsk2.DENSITY;
            case FSK4 -> Fsk4.DENSITY;
            case FSK8 -> Fsk8.DENSITY;
            case FSK16 -> Fsk16.DENSITY;
        };
    }

    private static final class Bpsk {
        static final InformationDensity DENSITY = InformationDensity.of(1, Constellation.line(2));
    }

    private static final class Qpsk {
        static final InformationDensity DENSITY = Bpsk.DENSITY.paired();
    }

    private static final class Psk8 {
        static final InformationDensity DENSITY = InformationDensity.of(3, Constellation.circle(8));
    }

    private static final class Qam16 {
        static final InformationDensity DENSITY =
                InformationDensity.of(2, Constellation.line(4)).paired();
    }

    private static final class Qam32 {
        static final InformationDensity DENSITY = InformationDensity.of(5, Constellation.cross32());
    }

    private static final class Qam64 {
        static final InformationDensity DENSITY =
                InformationDensity.of(3, Constellation.line(8)).paired();
    }

    private static final class Dbpsk {
        static final InformationDensity DENSITY = Fsk2.DENSITY.seenAt(ratio -> 2 * ratio);
    }

    private static final class Dqpsk {
        static final InformationDensity DENSITY = Qpsk.DENSITY.seenAt(ratio -> ratio * ratio / (1 + 2 * ratio));
    }

    private static final class Fsk2Coherent {
        static final InformationDensity DENSITY = Bpsk.DENSITY.seenAt(ratio -> ratio / 2);
    }

    private static final class Fsk2 {
        static final InformationDensity DENSITY = InformationDensity.of(1, new OrthogonalTones(2));
    }

    private static final class Fsk4 {
        static final InformationDensity DENSITY = InformationDensity.of(2, new OrthogonalTones(4));
    }

    private static final class Fsk8 {
        static final InformationDensity DENSITY = InformationDensity.of(3, new OrthogonalTones(8));
    }

    private static final class Fsk16 {
        static final InformationDensity DENSITY = InformationDensity.of(4, new OrthogonalTones(16));
    }
}
