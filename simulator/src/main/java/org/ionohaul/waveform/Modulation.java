package org.ionohaul.waveform;

/** How a symbol carries bits. */
public enum Modulation {
    /** Coherent two-phase shift keying. */
    BPSK(2),
    /** Coherent four-phase shift keying, Gray coded. */
    QPSK(4),
    /** Coherent eight-phase shift keying, Gray coded. */
    PSK8(8),
    /** Square 16-point quadrature amplitude modulation, Gray coded. */
    QAM16(16),
    /** Cross-shaped 32-point quadrature amplitude modulation. */
    QAM32(32),
    /** Square 64-point quadrature amplitude modulation, Gray coded. */
    QAM64(64),
    /** Two-phase shift keying detected against the symbol before. */
    DBPSK(2),
    /** Four-phase shift keying detected against the symbol before. */
    DQPSK(4),
    /** Two tones, detected with known phase. */
    FSK2_COHERENT(2),
    /** Two orthogonal tones, detected by their energy. */
    FSK2(2),
    /** Four orthogonal tones, detected by their energy. */
    FSK4(4),
    /** Eight orthogonal tones, detected by their energy. */
    FSK8(8),
    /** Sixteen orthogonal tones, detected by their energy. */
    FSK16(16);

    private final int points;

    Modulation(int points) {
        this.points = points;
    }

    /** Returns how many different symbols there are, a power of two. */
    public int points() {
        return points;
    }

    /** Returns how many bits a symbol carries, 1 or more. */
    public int bitsPerSymbol() {
        return Integer.numberOfTrailingZeros(points);
    }
}
