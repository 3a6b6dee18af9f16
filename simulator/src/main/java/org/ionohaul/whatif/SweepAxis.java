package org.ionohaul.whatif;

import java.util.List;
import java.util.OptionalDouble;
import org.ionohaul.study.KeySweep;

/**
 * The axis of the values of a key: true to scale where they are numbers of one unit, else one step a value.
 *
 * @param key the key
 * @param unit unit of the numbers; empty if they have none
 * @param values the values as they stand in the file
 * @param numbers the same as numbers; none if they are no numbers of one unit
 * @param step the distance of the numbers, where it is the same between all of them and leaves room for a mark at each
 */
record SweepAxis(String key, String unit, List<String> values, List<Double> numbers, OptionalDouble step) {
    private static final int MOST_MARKS = 9;

    static SweepAxis of(KeySweep sweep) {
        List<Double> numbers = sweep.numbers();
        return new SweepAxis(
                sweep.key(),
                numbers.isEmpty() ? "" : sweep.first().replaceAll("[-+.\\d\\s]", ""),
                sweep.values(),
                numbers,
                numbers.isEmpty() || numbers.size() > MOST_MARKS ? OptionalDouble.empty() : step(numbers));
    }

    private static OptionalDouble step(List<Double> numbers) {
        double step = (numbers.get(numbers.size() - 1) - numbers.get(0)) / (numbers.size() - 1);
        for (int i = 1; i < numbers.size(); i++) {
            if (Math.abs(numbers.get(i) - numbers.get(i - 1) - step) > 0.01 * Math.abs(step)) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(Math.abs(step));
    }
}
