package org.ionohaul.anchor;

/**
 * A Hermitian positive definite system of linear equations, factored as L D L^H with unit lower triangular L (Golub and
 * Van Loan, Matrix Computations, 4.1). Commons Math has none for complex numbers.
 */
final class HermitianSystem {
    private final int size;
    private final int band;
    private final double[][] real;
    private final double[][] imaginary;

    /**
     * Prepares a system of zeros.
     *
     * @param band below the diagonal nothing lies farther out than this
     */
    HermitianSystem(int size, int band) {
        this.size = size;
        this.band = band;
        this.real = new double[size][size];
        this.imaginary = new double[size][size];
    }

    /** Adds to an element on or below the diagonal. */
    void add(int row, int column, double re, double im) {
        real[row][column] += re;
        imaginary[row][column] += im;
    }

    double diagonal(int row) {
        return real[row][row];
    }

    /** Factors in place: L below the diagonal, D on it. */
    void factor() {
        for (int j = 0; j < size; j++) {
            for (int k = Math.max(0, j - band); k < j; k++) {
                real[j][j] -= real[k][k] * (square(real[j][k]) + square(imaginary[j][k]));
            }
            for (int i = j + 1; i <= Math.min(size - 1, j + band); i++) {
                eliminate(i, j);
            }
        }
    }

    private void eliminate(int i, int j) {
        double re = real[i][j];
        double im = imaginary[i][j];
        for (int k = Math.max(0, i - band); k < j; k++) {
            re -= real[k][k] * (real[i][k] * real[j][k] + imaginary[i][k] * imaginary[j][k]);
            im -= real[k][k] * (imaginary[i][k] * real[j][k] - real[i][k] * imaginary[j][k]);
        }
        real[i][j] = re / real[j][j];
        imaginary[i][j] = im / real[j][j];
    }

    /** Turns a right-hand side b into D^-1 L^-1 b, after {@link #factor}. */
    void forward(Signal b) {
        for (int i = 0; i < size; i++) {
            for (int k = Math.max(0, i - band); k < i; k++) {
                b.addProduct(i, -real[i][k], -imaginary[i][k], b.real()[k], b.imaginary()[k]);
            }
        }
        for (int i = 0; i < size; i++) {
            b.set(i, b.real()[i] / real[i][i], b.imaginary()[i] / real[i][i]);
        }
    }

    /** Takes from element i of b what later elements of x do to it through L^H. */
    void feedBack(Signal b, int i, Signal x) {
        for (int k = i + 1; k <= Math.min(size - 1, i + band); k++) {
            b.addProduct(i, -real[k][i], imaginary[k][i], x.real()[k], x.imaginary()[k]);
        }
    }

    /** Solves in place, after {@link #factor}. */
    void solve(Signal b) {
        forward(b);
        for (int i = size - 1; i >= 0; i--) {
            feedBack(b, i, b);
        }
    }

    private static double square(double x) {
        return x * x;
    }
}
