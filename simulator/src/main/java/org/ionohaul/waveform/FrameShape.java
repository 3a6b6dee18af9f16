package org.ionohaul.waveform;

/**
 * How a frame's bits are put on the air.
 *
 * @param modulation what a symbol carries
 * @param symbolRateBd symbols a second over all carriers together, known symbols and guard intervals counted, positive
 * @param knownShare share of the airtime that carries no data (known symbols, pilots, guard intervals), from 0 to below 1
 * @param codeRate information bits per code bit, above 0; 1 means uncoded: a single bit error loses the frame
 * @param payloadBytes user bytes a frame, 1 or more (0 for control bursts that carry none)
 * @param overheadBytes header and check bytes a frame, zero or more
 * @param interleaverSeconds time over which a frame's bits are spread, zero for just the frame's own airtime; a burst is
 *     filled up to a whole number of interleavers
 * @param delayToleranceSeconds longest delay spread that the guard interval or equaliser absorbs, zero or more
 * @param gapDb how much more SNR the real receiver needs than the model's ideal one, in dB
 * @param ceilingDb residual distortion of the receiver: the SINR it sees never exceeds this many dB
 */
public record FrameShape(
        Modulation modulation,
        double symbolRateBd,
        double knownShare,
        double codeRate,
        int payloadBytes,
        int overheadBytes,
        double interleaverSeconds,
        double delayToleranceSeconds,
        double gapDb,
        double ceilingDb) {
    /** Checks every value. */
    public FrameShape {
        require(symbolRateBd > 0 && symbolRateBd < 1e6, "symbolRateBd must be positive", symbolRateBd);
        require(knownShare >= 0 && knownShare < 1, "knownShare must be from 0 to below 1", knownShare);
        require(codeRate > 0 && codeRate <= 1, "codeRate must be above 0 and at most 1", codeRate);
        require(payloadBytes >= 0, "payloadBytes must not be negative", payloadBytes);
        require(overheadBytes >= 0, "overheadBytes must not be negative", overheadBytes);
        require(payloadBytes + overheadBytes > 0, "a frame must carry bytes", payloadBytes);
        require(interleaverSeconds >= 0, "interleaverSeconds must not be negative", interleaverSeconds);
        require(delayToleranceSeconds >= 0, "delayToleranceSeconds must not be negative", delayToleranceSeconds);
        require(Math.abs(gapDb) < 100, "gapDb must be finite", gapDb);
        require(Math.abs(ceilingDb) < 1000, "ceilingDb must be finite", ceilingDb);
    }

    private static void require(boolean holds, String message, double value) {
        if (!holds) {
            throw new IllegalArgumentException(message + ": " + value);
        }
    }

    /** Returns the information bits of a frame, header and check included. */
    public int informationBits() {
        return 8 * (payloadBytes + overheadBytes);
    }

    /** Returns the data symbols of a frame: as many as its coded bits need. */
    public int dataSymbols() {
        return (int) Math.ceil(informationBits() / (codeRate * modulation.bitsPerSymbol()) - 1e-9);
    }

    /** Returns how long one frame is on the air, in seconds, interleaver fill not counted. */
    public double airtimeSeconds() {
        return dataSymbols() / (symbolRateBd * (1 - knownShare));
    }
}
