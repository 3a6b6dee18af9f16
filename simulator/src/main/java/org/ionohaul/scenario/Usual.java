package org.ionohaul.scenario;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Within what the values of a key usually lie. Common practice, no source: wide enough that what lies outside is more likely
 * a slip than meant.
 *
 * @param low least usual number
 * @param high largest usual number
 * @param lowText the least as people write it
 * @param highText the largest as people write it
 */
record Usual(double low, double high, String lowText, String highText) {
    /** Returns what is odd about a value; empty if nothing is. Of an uncertain one, its middle is looked at. */
    Optional<String> oddity(Object value) {
        OptionalDouble number = number(value);
        return number.isPresent() && (number.getAsDouble() < low || number.getAsDouble() > high)
                ? Optional.of("is unusual: usually from " + lowText + " to " + highText)
                : Optional.empty();
    }

    /** Returns a value of a key as a number on the key's own scale; none if it is on another, or no number. */
    static OptionalDouble number(Object value) {
        if (value instanceof Number number) {
            return OptionalDouble.of(number.doubleValue());
        }
        if (value instanceof VisitorLevel visitor) {
            return visitor.reference() == VisitorLevel.Reference.NONE
                    ? OptionalDouble.empty()
                    : number(visitor.level());
        }
        return value instanceof Uncertain uncertain
                ? OptionalDouble.of(uncertain.quantile(0.5))
                : OptionalDouble.empty();
    }
}
