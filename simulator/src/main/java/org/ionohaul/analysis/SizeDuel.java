package org.ionohaul.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.study.SizeGrid;

/**
 * Two modes under the same skies, size by size.
 *
 * <p>At each size an exact sign test asks which one comes first more often. Their crossing lies between the last size at
 * which the one does beyond chance and the first at which the other does: the sizes in between are those that the test
 * can't reject as the crossing, a confidence set if the modes cross once.
 *
 * @param first name of the one mode
 * @param second name of the other
 * @param leads one entry a size, rising
 * @param crossing where they change places, if they do beyond chance
 */
public record SizeDuel(String first, String second, List<Lead> leads, Optional<Crossing> crossing) {
    private static final double SIGNIFICANCE = 1 - Estimate.CONFIDENCE;

    /**
     * Who comes first with files of one size.
     *
     * @param bytes the size
     * @param firstBefore trials in which the first mode came first
     * @param secondBefore trials in which the second mode came first
     * @param pValue chance of so uneven a split if neither came first more often
     */
    public record Lead(long bytes, int firstBefore, int secondBefore, double pValue) {
        /** Returns 1 if the first mode comes first more often beyond chance, -1 if the second does, else 0. */
        int sign() {
            return pValue < SIGNIFICANCE ? Integer.signum(difference()) : 0;
        }

        int difference() {
            return firstBefore - secondBefore;
        }
    }

    /** Copies the list. */
    public SizeDuel {
        leads = List.copyOf(leads);
    }

    /** Compares two modes over trials under the same skies. */
    static SizeDuel of(SizeTimes first, SizeTimes second) {
        List<Lead> leads = IntStream.range(0, first.sizes())
                .mapToObj(i -> lead(SizeGrid.BYTES.get(i), PairedTimes.of(first.seconds(i), second.seconds(i))))
                .toList();
        String firstName = first.mode().name();
        String secondName = second.mode().name();
        return new SizeDuel(firstName, secondName, leads, crossing(firstName, secondName, leads));
    }

    private static Lead lead(long bytes, PairedTimes times) {
        return new Lead(
                bytes,
                times.firstBefore().hits(),
                times.secondBefore().hits(),
                times.signs().exactPValue());
    }

    private static Optional<Crossing> crossing(String first, String second, List<Lead> leads) {
        int last = -1;
        for (int i = 0; i < leads.size(); i++) {
            int sign = leads.get(i).sign();
            if (sign != 0 && last >= 0 && sign != leads.get(last).sign()) {
                Estimate bytes = crossingBytes(leads.subList(last, i + 1));
                return Optional.of(sign < 0 ? new Crossing(first, second, bytes) : new Crossing(second, first, bytes));
            }
            last = sign != 0 ? i : last;
        }
        return Optional.empty();
    }

    /** The leads begin and end with opposite signs; between the two sizes where they change, size is logarithmic. */
    private static Estimate crossingBytes(List<Lead> leads) {
        int sign = leads.get(0).sign();
        int after = 1;
        while (leads.get(after).difference() * sign > 0) {
            after++;
        }
        Lead below = leads.get(after - 1);
        Lead above = leads.get(after);
        double share = (double) below.difference() / (below.difference() - above.difference());
        double bytes = below.bytes() * Math.pow((double) above.bytes() / below.bytes(), share);
        return new Estimate(
                bytes, leads.get(0).bytes(), leads.get(leads.size() - 1).bytes());
    }
}
