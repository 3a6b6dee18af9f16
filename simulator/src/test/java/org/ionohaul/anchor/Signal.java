package org.ionohaul.anchor;

/** Complex samples, in two arrays that are open to their users: this is the innermost loop of the reference. */
final class Signal {
    private final double[] real;
    private final double[] imaginary;

    /** Makes so many zeros. */
    Signal(int length) {
        this.real = new double[length];
        this.imaginary = new double[length];
    }

    double[] real() {
        return real;
    }

    double[] imaginary() {
        return imaginary;
    }

    int length() {
        return real.length;
    }

    void set(int at, double re, double im) {
        real[at] = re;
        imaginary[at] = im;
    }

    void add(int at, double re, double im) {
        real[at] += re;
        imaginary[at] += im;
    }

    /** Adds a product of two complex numbers. */
    void addProduct(int at, double re, double im, double otherRe, double otherIm) {
        real[at] += re * otherRe - im * otherIm;
        imaginary[at] += re * otherIm + im * otherRe;
    }

    double power(int at) {
        return real[at] * real[at] + imaginary[at] * imaginary[at];
    }
}
