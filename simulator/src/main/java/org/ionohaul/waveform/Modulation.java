package org.ionohaul.waveform;

/** How a symbol carries bits. */
public enum Modulation {
    /** Coherent two-phase shift keying. */
    BPSK(2, 1),
    /** Coherent four-phase shift keying, Gray coded. */
    QPSK(4, 0.5),
    /** Coherent eight-phase shift keying, Gray coded. */
    PSK8(8, 0.146),
    /** Square 16-point quadrature amplitude modulation, Gray coded. */
    QAM16(16, 0.1),
    /** Cross-shaped 32-point quadrature amplitude modulation. */
    QAM32(32, 0.05),
    /** Square 64-point quadrature amplitude modulation, Gray coded. */
    QAM64(64, 1.0 / 42),
    /** Two-phase shift keying detected against the symbol before. */
    DBPSK(2, 1),
    /** Four-phase shift keying detected against the symbol before. */
    DQPSK(4, 0.25),
    /** Two tones, detected with known phase. */
    FSK2_COHERENT(2, 0.5),
    /** Two orthogonal tones, detected by their energy. */
    FSK2(2, 0.5),
    /** Four orthogonal tones, detected by their energy. */
    FSK4(4, 0.5),
    /** Eight orthogonal tones, detected by their energy. */
    FSK8(8, 0.5),
    /** Sixteen orthogonal tones, detected by their energy. */
    FSK16(16, 0.5);

    private final int points;
    private final double separation;

    Modulation(int points, double separation) {
        this.points = points;
        this.separation = separation;
    }

    /** Returns how many different symbols there are, a power of two. */
    public int points() {
        return points;
    }

    /** Returns whether a symbol is one of several tones. */
    boolean isTone() {
        return switch (this) {
            case FSK2_COHERENT, FSK2, FSK4, FSK8, FSK16 -> true;
            case BPSK, QPSK, PSK8, QAM16, QAM32, QAM64, DBPSK, DQPSK -> false;
        };
    }

    /** Returns how many bits a symbol carries, 1 or more. */
    public int bitsPerSymbol() {
        return Integer.numberOfTrailingZeros(points);
    }

    /**
     * Returns by which factor of Es/N0 the chance to take a symbol for its neighbour falls exponentially: the square of
     * half their distance over the mean energy of a symbol (Proakis, Digital Communications). Detected by energy, or
     * against the symbol before, as much as the noise of both leaves of it.
     */
    double separation() {
        return separation;
    }
}
