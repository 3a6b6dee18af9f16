package org.ionohaul.anchor;

/**
 * Least squares estimate of the gains of a few paths whose delays are known, from one look at known symbols; then the
 * gains at other times by {@link Tracking}.
 */
final class PathEstimator {
    private final int paths;
    private final double[] looks;
    private final Signal[] estimates;
    private int look;
    private HermitianSystem system;
    private Signal right;

    /**
     * Prepares for so many looks.
     *
     * @param looks when they are taken, in seconds
     */
    PathEstimator(int paths, double[] looks) {
        this.paths = paths;
        this.looks = looks;
        this.estimates = new Signal[paths];
        for (int path = 0; path < paths; path++) {
            estimates[path] = new Signal(looks.length);
        }
        this.system = new HermitianSystem(paths, paths);
        this.right = new Signal(paths);
    }

    /** Adds one equation: what was heard is the sum over paths of gain times known. */
    void equation(double[] knownRe, double[] knownIm, double heardRe, double heardIm, double weight) {
        for (int i = 0; i < paths; i++) {
            right.addProduct(i, weight * knownRe[i], -weight * knownIm[i], heardRe, heardIm);
            for (int j = 0; j <= i; j++) {
                system.add(
                        i,
                        j,
                        weight * (knownRe[i] * knownRe[j] + knownIm[i] * knownIm[j]),
                        weight * (knownRe[i] * knownIm[j] - knownIm[i] * knownRe[j]));
            }
        }
    }

    /** Solves what was added since the last look. */
    void look() {
        for (int path = 0; path < paths; path++) {
            // So little that a look without any equation gives zero and the others are as they were.
            system.add(path, path, 1e-9, 0);
        }
        system.factor();
        system.solve(right);
        for (int path = 0; path < paths; path++) {
            estimates[path].set(look, right.real()[path], right.imaginary()[path]);
        }
        look++;
        system = new HermitianSystem(paths, paths);
        right = new Signal(paths);
    }

    double real(int path, int look) {
        return estimates[path].real()[look];
    }

    double imaginary(int path, int look) {
        return estimates[path].imaginary()[look];
    }

    /** Returns the gains at given times, in seconds; {@code noise} is that of one look. */
    Signal[] at(double[] times, Tracking tracking, AirCondition condition, double noise) {
        Signal[] gains = new Signal[paths];
        for (int path = 0; path < paths; path++) {
            double[][] weights = tracking.weights(
                    looks, times, condition.spreadsHz()[path], noise / condition.powers()[path]);
            gains[path] = new Signal(times.length);
            for (int i = 0; i < times.length; i++) {
                for (int j = 0; j < looks.length; j++) {
                    gains[path].add(i, weights[i][j] * real(path, j), weights[i][j] * imaginary(path, j));
                }
            }
        }
        return gains;
    }
}
