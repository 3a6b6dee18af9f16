package org.ionohaul.waveform;

/**
 * Between which mean ratings of its symbols a frame's fate is open once its draw is known: the probability of decoding never falls
 * with the rating, so that from an upper bar on the frame is right whatever the rating is exactly, and up to a lower bar lost.
 * The bars are read off a table of probabilities at equally distant ratings, so a cell more apart than they could be.
 */
final class Bars {
    private static final int CELLS = 256;

    /** Probabilities that differ by less may do so by rounding alone. */
    private static final double ROUNDING = 1e-9;

    private final double lowest;
    private final double perCell;
    private final double[] right = new double[CELLS + 1];
    private final double[] passes = new double[CELLS + 1];

    Bars(FrameModel model) {
        lowest = model.ratings().lowest();
        perCell = (model.ratings().highest() - lowest) / CELLS;
        for (int cell = 0; cell <= CELLS; cell++) {
            double evidence = model.evidence(rating(cell));
            double passing = model.decodingProbability(evidence);
            passes[cell] = passing + ROUNDING;
            right[cell] = passing - model.unnoticedErrorProbability(evidence) - ROUNDING;
        }
        // Where rounding makes them fall, the more careful value stands.
        for (int cell = 1; cell <= CELLS; cell++) {
            passes[cell] = Math.max(passes[cell], passes[cell - 1]);
            right[CELLS - cell] = Math.min(right[CELLS - cell], right[CELLS - cell + 1]);
        }
    }

    /** Returns the mean rating from which on a frame of this draw is right; infinite if it need not be for any. */
    double enough(double draw) {
        int below = firstAbove(right, draw);
        return below > CELLS ? Double.POSITIVE_INFINITY : rating(below);
    }

    /** Returns the mean rating up to which a frame of this draw is lost; minus infinity if it need not be for any. */
    double tooLittle(double draw) {
        int above = firstAbove(passes, draw);
        return above == 0 ? Double.NEGATIVE_INFINITY : rating(above - 1);
    }

    private double rating(int cell) {
        return lowest + cell * perCell;
    }

    /** Returns the first place of a rising table whose value exceeds a draw, one beyond its end if none does. */
    private static int firstAbove(double[] rising, double draw) {
        int below = -1;
        int above = rising.length;
        while (above - below > 1) {
            int middle = (below + above) >>> 1;
            if (rising[middle] > draw) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return above;
    }
}
