package org.ionohaul.whatif;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ionohaul.picture.Plot;
import org.ionohaul.picture.Scale;
import org.ionohaul.picture.Tick;
import org.ionohaul.study.KeySweep;

/**
 * The axis of the values of a key: true to scale where they are numbers of one unit, else one step a value.
 *
 * @param name what is varied
 * @param unit unit of the numbers; empty if they have none
 * @param values the values as they stand in the file
 * @param numbers the same as numbers; none if they are no numbers of one unit
 * @param step the distance of the numbers, where it is the same between all of them and leaves room for a mark at each
 */
record SweepAxis(String name, String unit, List<String> values, List<Double> numbers, OptionalDouble step) {
    private static final int MOST_MARKS = 9;

    static SweepAxis of(String name, KeySweep sweep) {
        List<Double> numbers = sweep.numbers();
        return new SweepAxis(
                name,
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

    /** Returns where the values lie. */
    List<Double> positions() {
        return numbers.isEmpty()
                ? IntStream.range(0, values.size()).mapToObj(i -> (double) i).toList()
                : numbers;
    }

    /** Returns the lying scale between two pixels. */
    Scale scale(double from, double to) {
        if (numbers.isEmpty() || numbers.size() == 1) {
            double middle = numbers.isEmpty() ? (values.size() - 1) / 2.0 : numbers.get(0);
            double half = Math.max(1, values.size()) / 2.0;
            return Scale.linear(middle - half, middle + half, from, to);
        }
        return Scale.linear(Collections.min(numbers), Collections.max(numbers), from, to);
    }

    /** Draws the axis below a plot and returns how much room it took. */
    double drawBelow(Plot plot) {
        if (numbers.isEmpty()) {
            plot.namesBelow(values, name);
            return Plot.roomForNames(
                    plot.svg(), values, plot.across().at(1) - plot.across().at(0));
        }
        List<Tick> ticks = step.isPresent()
                ? numbers.stream()
                        .sorted()
                        .map(it -> new Tick(it, Scale.number(it)))
                        .toList()
                : plot.across().ticks(MOST_MARKS, Scale::number);
        plot.axisBelow(ticks, unit.isEmpty() ? name : name + ", " + unit);
        return Plot.roomBelow(plot.svg());
    }
}
