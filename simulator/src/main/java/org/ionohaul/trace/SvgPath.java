package org.ionohaul.trace;

/** The way of a pen, in SVG's notation. */
final class SvgPath {
    private final StringBuilder steps = new StringBuilder();

    /** Goes in a straight line; the first point is where the pen comes down. */
    SvgPath to(double x, double y) {
        steps.append(steps.isEmpty() ? 'M' : 'L')
                .append(Svg.number(x))
                .append(' ')
                .append(Svg.number(y));
        return this;
    }

    @Override
    public String toString() {
        return steps.toString();
    }
}
