package org.ionohaul.learning;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.placing.SimulatedRun;

/**
 * A log and what could have made it: a simulator of each run under any values of what is not known. The values are counted in
 * standard normal scores, so that everything that is not known is, before the log, standard normal and independent.
 */
public interface LogModel {
    /** Returns the logged runs. */
    List<LoggedRun> runs();

    /** Returns how many unknowns there are, 1 or more. */
    int unknowns();

    /**
     * Returns which unknowns matter to a run, by their numbers.
     *
     * @param run its place in the log, from 0
     */
    int[] unknownsOf(int run);

    /**
     * Returns an unknown's value on the scale on which its effect is most nearly straight, with a mean near 0 and a deviation near
     * 1.
     *
     * @param unknown its number
     * @param score its standard normal score
     */
    double straightened(int unknown, double score);

    /** Returns all unknowns on such scales. */
    default double[] straightened(double[] scores) {
        return IntStream.range(0, scores.length)
                .mapToDouble(it -> straightened(it, scores[it]))
                .toArray();
    }

    /**
     * Simulates a run; called from several threads.
     *
     * @param run its place in the log, from 0
     * @param scores a score for each unknown
     * @param number which simulation it is: the chance in it is its own
     */
    SimulatedRun simulated(int run, double[] scores, long number);

    /** Returns all that was read off a meter. */
    List<MeterReading> readings();

    /**
     * Returns what meters without an error would have shown, a value for each reading.
     *
     * @param scores a score for each unknown
     */
    double[] expectedReadings(double[] scores);

    /**
     * A number that was read off.
     *
     * @param value what was read, corrected for how it was read
     * @param deviation standard deviation of its error, positive; the error counts as normal
     */
    record MeterReading(double value, double deviation) {}
}
