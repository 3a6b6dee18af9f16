package org.ionohaul.random;

import java.util.Arrays;
import java.util.Optional;

/**
 * Draws by which pieces of a trial's chance were made anew, one after the other. Each picks its pieces by chance, so that a list of
 * numbers stands for all of them.
 */
final class Redraws {
    /** No draw since the first. */
    static final Redraws NONE = new Redraws(new long[0], new double[0]);

    private final long[] numbers;
    private final double[] shares;

    private Redraws(long[] numbers, double[] shares) {
        this.numbers = numbers;
        this.shares = shares;
    }

    /** Says whether a draw picks a piece. */
    @FunctionalInterface
    interface Pick {
        boolean picks(long number, double share);
    }

    /** Returns these draws and one more. */
    Redraws then(long number, double share) {
        if (number < 0 || !(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("no draw: number " + number + ", share " + share);
        }
        long[] moreNumbers = Arrays.copyOf(numbers, numbers.length + 1);
        double[] moreShares = Arrays.copyOf(shares, shares.length + 1);
        moreNumbers[numbers.length] = number;
        moreShares[shares.length] = share;
        return new Redraws(moreNumbers, moreShares);
    }

    /** Returns the number of the last draw that picked a piece; empty if none did. */
    Optional<Long> last(Pick pick) {
        for (int i = numbers.length - 1; i >= 0; i--) {
            if (pick.picks(numbers[i], shares[i])) {
                return Optional.of(numbers[i]);
            }
        }
        return Optional.empty();
    }
}
