package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.study.SizeGrid;

/**
 * Two modes under the same skies, size by size.
 *
 * <p>At each size it is counted which one comes first. That they change places is said only if at some size the one comes
 * first more often and at a larger one the other, both beyond chance after a correction for the number of sizes. The range
 * of the crossing is then those sizes in between at which a sign test can't reject it, a confidence set if the modes cross
 * once; between two sizes that were sent the test's score is taken as straight over the logarithm of size.
 *
 * @param first name of the one mode
 * @param second name of the other
 * @param leads one entry a size, rising
 * @param crossing where they change places, if they do beyond chance
 */
public record SizeDuel(String first, String second, List<Lead> leads, Optional<Crossing> crossing) {
    private static final double ERROR_RATE = 1 - Estimate.CONFIDENCE;
    private static final double BEYOND_CHANCE = NormalDistribution.of(0, 1).inverseSurvivalProbability(ERROR_RATE / 2);

    /**
     * Who comes first with files of one size. Where times may be late, by how much is open: the two counts are those that
     * suit the first mode least and most.
     *
     * @param bytes the size
     * @param atLeast trials in which each mode came first, if only the second mode's times are late
     * @param atMost the same if only the first mode's are; no different if such files were sent
     */
    public record Lead(long bytes, DiscordantPairs atLeast, DiscordantPairs atMost) {
        /** Returns 1 if the first mode comes first more often beyond chance, -1 if the second does, else 0. */
        private int sign(double errorRate) {
            if (atLeast.standardScore() > 0 && atLeast.exactPValue() < errorRate) {
                return 1;
            }
            return atMost.standardScore() < 0 && atMost.exactPValue() < errorRate ? -1 : 0;
        }

        private double middleScore() {
            return (atLeast.standardScore() + atMost.standardScore()) / 2;
        }

        private Lead swapped() {
            return new Lead(bytes, atMost.swapped(), atLeast.swapped());
        }
    }

    /** Copies the list. */
    public SizeDuel {
        leads = List.copyOf(leads);
    }

    /** Compares two modes over trials under the same skies. */
    static SizeDuel of(SizeTimes first, SizeTimes second) {
        List<Lead> leads = IntStream.range(0, first.sizes())
                .mapToObj(size -> lead(first, second, size))
                .toList();
        String firstName = first.mode().name();
        String secondName = second.mode().name();
        return new SizeDuel(firstName, secondName, leads, crossing(firstName, secondName, leads));
    }

    private static Lead lead(SizeTimes first, SizeTimes second, int size) {
        return new Lead(
                SizeGrid.BYTES.get(size),
                PairedTimes.of(first.seconds(size), earliest(second, size)).signs(),
                PairedTimes.of(earliest(first, size), second.seconds(size)).signs());
    }

    private static double[] earliest(SizeTimes times, int size) {
        double late = times.lateSeconds(size);
        return DoubleStream.of(times.seconds(size)).map(it -> it - late).toArray();
    }

    private static Optional<Crossing> crossing(String first, String second, List<Lead> leads) {
        double errorRate = ERROR_RATE / leads.size();
        int last = -1;
        for (int i = 0; i < leads.size(); i++) {
            int sign = leads.get(i).sign(errorRate);
            if (sign != 0 && last >= 0 && sign != leads.get(last).sign(errorRate)) {
                List<Lead> between = leads.subList(last, i + 1);
                return Optional.of(
                        sign < 0
                                ? new Crossing(first, second, bytes(between))
                                : new Crossing(
                                        second,
                                        first,
                                        bytes(between.stream()
                                                .map(Lead::swapped)
                                                .toList())));
            }
            last = sign != 0 ? i : last;
        }
        return Optional.empty();
    }

    /** Where scores fall from beyond chance on the one side to beyond chance on the other. */
    private static Estimate bytes(List<Lead> leads) {
        double low = firstFall(leads, it -> it.atLeast().standardScore(), BEYOND_CHANCE);
        double high = lastFall(leads, it -> it.atMost().standardScore(), -BEYOND_CHANCE);
        // Chance may turn the score more than once: the middle of where it does.
        double value = Math.sqrt(firstFall(leads, Lead::middleScore, 0) * lastFall(leads, Lead::middleScore, 0));
        return new Estimate(value, Math.min(low, value), Math.max(high, value));
    }

    private static double firstFall(List<Lead> leads, ToDoubleFunction<Lead> score, double level) {
        int after = 1;
        while (score.applyAsDouble(leads.get(after)) >= level) {
            after++;
        }
        return fall(leads.get(after - 1), leads.get(after), score, level);
    }

    private static double lastFall(List<Lead> leads, ToDoubleFunction<Lead> score, double level) {
        int before = leads.size() - 2;
        while (score.applyAsDouble(leads.get(before)) < level) {
            before--;
        }
        return fall(leads.get(before), leads.get(before + 1), score, level);
    }

    private static double fall(Lead before, Lead after, ToDoubleFunction<Lead> score, double level) {
        double from = score.applyAsDouble(before);
        double share = (from - level) / (from - score.applyAsDouble(after));
        return before.bytes() * Math.pow((double) after.bytes() / before.bytes(), share);
    }
}
