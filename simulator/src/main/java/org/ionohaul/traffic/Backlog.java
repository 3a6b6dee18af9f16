package org.ionohaul.traffic;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.trial.NetTrial;

/**
 * How many messages wait, neither through nor given up, and whether they become more and more.
 *
 * <p>A net that keeps up leaves less and less of what is written behind, one that does not leaves the same share for ever. Between the two
 * lies the queue at its limit, at which as much is written as can be handed over. With messages written by chance it is, in the
 * diffusion limit, a Brownian motion reflected at nothing whose variance grows by (1 + c2) times the rate of writing, c2 being the squared
 * coefficient of variation of services (L. Kleinrock, "Queueing Systems II", 1976, section 2.7): from x that wait, it comes to the mean of
 * |x + z| with z normal of that variance. So each trial is held against a queue at its limit that begins its second half with as
 * many as wait in that trial: whatever came before, a net that keeps up leaves less behind and one that does not leaves more. How
 * services vary is not known, so that the interval is wide enough for any c2 from 0 (constant) to 3 (exponential: 1).
 *
 * <p>Mail at a gateway that does not call waits for its station's next call and not for the channel: how much of it waits tells
 * nothing of whether the net keeps up.
 *
 * @param atMiddle messages that wait in the middle of the time that counts, a trial
 * @param atEnd those that wait at its end
 * @param leftBehind of messages that somebody calls for: by how many more wait at the end, as a share of what is written after the
 *     middle
 * @param beyondLimit by how much that share is more than for a queue at its limit, whose services are exponential for the value
 */
public record Backlog(Estimate atMiddle, Estimate atEnd, Estimate leftBehind, Estimate beyondLimit) {
    /** What can be said of a backlog. */
    public enum Verdict {
        /** More is left behind than by a queue at its limit, beyond chance. */
        PILES_UP,
        /** Less is, beyond chance. */
        KEEPS_UP,
        /** Either may be. */
        OPEN
    }

    private static final double CONSTANT = 0;
    private static final double EXPONENTIAL = 1;
    private static final double MOST_VARIED = 3;
    private static final double MANY = Double.POSITIVE_INFINITY;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /**
     * Works out the backlog of trials, at least one; messages that don't count are waiting all the same.
     *
     * @param isCalledFor which messages somebody calls for
     * @param warmUpSeconds from when on messages count
     * @param endSeconds until when a trial is watched
     */
    static Backlog of(
            List<NetTrial> trials, Predicate<NetTrial.Message> isCalledFor, double warmUpSeconds, double endSeconds) {
        double middleSeconds = (warmUpSeconds + endSeconds) / 2;
        double[] middle = each(trials, it -> waiting(it, isCalledFor, middleSeconds));
        double[] end = each(trials, it -> waiting(it, isCalledFor, endSeconds));
        double[] written = each(trials, it -> writtenAfter(it, isCalledFor, middleSeconds));
        double[] grown = new double[trials.size()];
        Arrays.setAll(grown, trial -> end[trial] - middle[trial]);
        return new Backlog(
                waiting(trials, middleSeconds),
                waiting(trials, endSeconds),
                new RatioOfSums(grown, written).within(-MANY, MANY),
                new Estimate(
                        beyondLimit(EXPONENTIAL, middle, end, written).value(),
                        beyondLimit(MOST_VARIED, middle, end, written).low(),
                        beyondLimit(CONSTANT, middle, end, written).high()));
    }

    private static Estimate beyondLimit(double variation, double[] middle, double[] end, double[] written) {
        double deviation =
                Math.sqrt((1 + variation) * Arrays.stream(written).average().orElse(0));
        double[] beyond = new double[middle.length];
        Arrays.setAll(beyond, trial -> end[trial] - atLimit(middle[trial], deviation));
        return new RatioOfSums(beyond, written).within(-MANY, MANY);
    }

    /** Returns the mean of |x + z|, with z normal of a standard deviation of zero or more (folded normal distribution). */
    static double atLimit(double x, double deviation) {
        if (deviation == 0) {
            return x;
        }
        double ratio = x / deviation;
        return 2 * deviation * NORMAL.density(ratio) + x * (1 - 2 * NORMAL.survivalProbability(ratio));
    }

    private static Estimate waiting(List<NetTrial> trials, double atSeconds) {
        return RatioOfSums.mean(each(trials, it -> waiting(it, any -> true, atSeconds)))
                .within(0, MANY);
    }

    /** Returns whether messages pile up. */
    public Verdict verdict() {
        if (beyondLimit.low() > 0) {
            return Verdict.PILES_UP;
        }
        return beyondLimit.high() < 0 ? Verdict.KEEPS_UP : Verdict.OPEN;
    }

    private static double[] each(List<NetTrial> trials, ToDoubleFunction<NetTrial> of) {
        return trials.stream().mapToDouble(of).toArray();
    }

    private static double waiting(NetTrial trial, Predicate<NetTrial.Message> which, double atSeconds) {
        long atNanos = Math.round(1e9 * atSeconds);
        return trial.messages().stream()
                .filter(it ->
                        it.writtenNanos() <= atNanos && it.deliveredNanos() > atNanos && it.givenUpNanos() > atNanos)
                .filter(which)
                .count();
    }

    private static double writtenAfter(NetTrial trial, Predicate<NetTrial.Message> which, double seconds) {
        long nanos = Math.round(1e9 * seconds);
        return trial.messages().stream()
                .filter(it -> it.writtenNanos() > nanos)
                .filter(which)
                .count();
    }
}
