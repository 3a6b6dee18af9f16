package org.ionohaul.anchor;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;

/** How a receiver follows a path's gain between the looks it takes at known symbols. */
enum Tracking {
    /** It is told the gain: the bound of every receiver. */
    KNOWN,
    /** It joins neighbouring looks by straight lines, whatever the path is like. */
    LINES,
    /** It weighs all looks of the frame by Wiener's rule, told noise and Doppler spread: the best that is linear. */
    WIENER;

    /**
     * Returns for each time the weights of the looks.
     *
     * @param looks when looks were taken, in seconds, rising
     * @param times when the gain is wanted
     * @param spreadHz Doppler spread (2 sigma) in Hz
     * @param noise variance of a look's error over the path's mean power
     */
    double[][] weights(double[] looks, double[] times, double spreadHz, double noise) {
        return this == WIENER ? wiener(looks, times, spreadHz, noise) : lines(looks, times);
    }

    private static double[][] lines(double[] looks, double[] times) {
        double[][] weights = new double[times.length][looks.length];
        for (int i = 0; i < times.length; i++) {
            int before = 0;
            while (before < looks.length - 2 && looks[before + 1] <= times[i]) {
                before++;
            }
            double share = (times[i] - looks[before]) / (looks[before + 1] - looks[before]);
            double bounded = Math.min(1, Math.max(0, share));
            weights[i][before] = 1 - bounded;
            weights[i][before + 1] = bounded;
        }
        return weights;
    }

    private static double[][] wiener(double[] looks, double[] times, double spreadHz, double noise) {
        double[][] among = new double[looks.length][looks.length];
        for (int i = 0; i < looks.length; i++) {
            for (int j = 0; j < looks.length; j++) {
                among[i][j] = correlation(looks[i] - looks[j], spreadHz) + (i == j ? noise : 0);
            }
        }
        DecompositionSolver solver = new CholeskyDecomposition(new Array2DRowRealMatrix(among)).getSolver();
        double[][] weights = new double[times.length][];
        for (int i = 0; i < times.length; i++) {
            double[] with = new double[looks.length];
            for (int j = 0; j < looks.length; j++) {
                with[j] = correlation(times[i] - looks[j], spreadHz);
            }
            weights[i] = solver.solve(new ArrayRealVector(with)).toArray();
        }
        return weights;
    }

    /** ITU-R F.1487: exp(-2 pi^2 sigma^2 t^2) with sigma half the spread. */
    private static double correlation(double seconds, double spreadHz) {
        double turns = Math.PI * spreadHz * seconds;
        return Math.exp(-turns * turns / 2);
    }
}
