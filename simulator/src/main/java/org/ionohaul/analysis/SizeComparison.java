package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.PairedTimes;
import org.ionohaul.study.SizeGrid;

/**
 * Two modes under the same skies, size by size.
 *
 * <p>At each size it is counted which one comes first. That they change places is said only if at some size the one comes
 * first more often and at a larger one the other, both beyond chance after a correction for the number of sizes; they may do
 * so more than once. The range of a crossing is then those sizes in between at which the median lead may be nothing (a sign
 * test turned round), a confidence set if the modes cross once there; between two sizes that were sent the lead and its
 * interval are taken as straight over size.
 *
 * @param first name of the one mode
 * @param second name of the other
 * @param leads one entry a size, rising
 * @param proven the sizes at which one is ahead beyond chance, rising, by turns; empty if none is anywhere
 * @param crossings where they change places, one between each two of these
 */
public record SizeComparison(
        String first, String second, List<Lead> leads, List<ProvenLead> proven, List<Crossing> crossings) {
    private static final double ERROR_RATE = 1 - Estimate.CONFIDENCE;

    /**
     * Who comes first with files of one size, and by how much.
     *
     * @param firsts the trials in which just one came first
     * @param seconds median lead of the first mode, as in {@link Comparison}
     */
    public record Reading(DiscordantPairs firsts, Estimate seconds) {
        private static Reading of(PairedTimes times) {
            return new Reading(times.signs(), times.lead(0.5, Estimate.CONFIDENCE));
        }

        private Reading swapped() {
            return new Reading(firsts.swapped(), new Estimate(-seconds.value(), -seconds.high(), -seconds.low()));
        }
    }

    /**
     * Two modes with files of one size. Where times may be late, by how much is open: the two readings are those that suit
     * the first mode least and most.
     *
     * @param bytes the size
     * @param isSent whether such files were sent; else what is said of them was read off a later transfer
     * @param atLeast what is read if only the second mode's times are late
     * @param atMost the same if only the first mode's are; no different if such files were sent
     */
    public record Lead(long bytes, boolean isSent, Reading atLeast, Reading atMost) {
        /** Returns the same if one knew that times are as late as a reading supposes. */
        private Lead as(Reading reading) {
            return new Lead(bytes, isSent, reading, reading);
        }

        /** Returns 1 if the first mode comes first more often beyond chance, -1 if the second does, else 0. */
        private int sign(double errorRate) {
            if (isUneven(atLeast, errorRate)
                    && atLeast.firsts().first() > atLeast.firsts().second()) {
                return 1;
            }
            return isUneven(atMost, errorRate)
                            && atMost.firsts().first() < atMost.firsts().second()
                    ? -1
                    : 0;
        }

        private static boolean isUneven(Reading reading, double errorRate) {
            return reading.firsts().exactPValue() < errorRate;
        }

        private Lead swapped() {
            return new Lead(bytes, isSent, atMost.swapped(), atLeast.swapped());
        }
    }

    /** Copies the lists. */
    public SizeComparison {
        leads = List.copyOf(leads);
        proven = List.copyOf(proven);
        crossings = List.copyOf(crossings);
    }

    /** Returns the smallest size at which it is told who is first, if smaller ones are open; needs a proven lead. */
    public OptionalLong openBelow() {
        long smallest = proven.get(0).fromBytes();
        return smallest > leads.get(0).bytes() ? OptionalLong.of(smallest) : OptionalLong.empty();
    }

    /** Returns the largest size at which it is told who is first, if larger ones are open; needs a proven lead. */
    public OptionalLong openAbove() {
        long largest = proven.get(proven.size() - 1).toBytes();
        return largest < leads.get(leads.size() - 1).bytes() ? OptionalLong.of(largest) : OptionalLong.empty();
    }

    /** Compares two modes over trials under the same skies. */
    static SizeComparison of(SizeTimes first, SizeTimes second) {
        List<Lead> leads = IntStream.range(0, first.sizes())
                .mapToObj(size -> lead(first, second, size))
                .toList();
        String firstName = first.mode().name();
        String secondName = second.mode().name();
        return of(firstName, secondName, leads);
    }

    private static SizeComparison of(String first, String second, List<Lead> leads) {
        List<Run> runs = runs(leads);
        return new SizeComparison(
                first,
                second,
                leads,
                runs.stream()
                        .map(it -> new ProvenLead(
                                it.mode(first, second),
                                leads.get(it.from()).bytes(),
                                leads.get(it.to()).bytes()))
                        .toList(),
                IntStream.range(1, runs.size())
                        .mapToObj(i -> crossing(first, second, leads, runs.get(i - 1), runs.get(i)))
                        .toList());
    }

    private static Lead lead(SizeTimes first, SizeTimes second, int size) {
        return new Lead(
                SizeGrid.BYTES.get(size),
                first.isSent(size),
                Reading.of(PairedTimes.of(first.seconds(size), earliest(second, size))),
                Reading.of(PairedTimes.of(earliest(first, size), second.seconds(size))));
    }

    private static double[] earliest(SizeTimes times, int size) {
        double late = times.lateSeconds(size);
        return DoubleStream.of(times.seconds(size)).map(it -> it - late).toArray();
    }

    /** Sizes, as a range of indices, at which the same mode comes first more often beyond chance. */
    private record Run(int sign, int from, int to) {
        private String mode(String first, String second) {
            return sign > 0 ? first : second;
        }
    }

    private static List<Run> runs(List<Lead> leads) {
        double errorRate = ERROR_RATE / leads.size();
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < leads.size(); i++) {
            int sign = leads.get(i).sign(errorRate);
            int last = runs.size() - 1;
            if (sign != 0 && last >= 0 && runs.get(last).sign() == sign) {
                runs.set(last, new Run(sign, runs.get(last).from(), i));
            } else if (sign != 0) {
                runs.add(new Run(sign, i, i));
            }
        }
        return runs;
    }

    private static Crossing crossing(String first, String second, List<Lead> leads, Run before, Run after) {
        List<Lead> between = leads.subList(before.to(), after.from() + 1);
        return new Crossing(
                before.mode(first, second),
                after.mode(first, second),
                bytes(
                        before.sign() > 0
                                ? between
                                : between.stream().map(Lead::swapped).toList()));
    }

    /**
     * Returns the sizes that are to be sent for the crossings to be told as sharply as the trials allow: those in and next to
     * their ranges that were read off later transfers, also where only that leaves open whether there is a crossing.
     */
    Set<Long> sizesToSend() {
        Stream<List<Lead>> readings = Stream.of(
                leads,
                leads.stream().map(it -> it.as(it.atLeast())).toList(),
                leads.stream().map(it -> it.as(it.atMost())).toList());
        return readings.map(it -> of(first, second, it))
                .flatMap(it -> it.crossings().stream())
                .flatMap(it -> notSent(it.bytes()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Stream<Long> notSent(Estimate range) {
        int from = SizeGrid.indexNotBelow((long) range.low()) - 1;
        int to = SizeGrid.indexNotBelow((long) Math.ceil(range.high())) + 1;
        return IntStream.rangeClosed(Math.max(0, from), Math.min(leads.size() - 1, to))
                .mapToObj(leads::get)
                .filter(it -> !it.isSent())
                .map(Lead::bytes);
    }

    /** Where the median lead falls from beyond chance on the one side to beyond chance on the other. */
    private static Estimate bytes(List<Lead> leads) {
        ToDoubleFunction<Lead> middle =
                it -> (it.atLeast().seconds().value() + it.atMost().seconds().value()) / 2;
        double low = firstFall(leads, it -> it.atLeast().seconds().low(), 0);
        double high = lastFall(leads, it -> it.atMost().seconds().high(), 1);
        // Chance may turn the lead more than once: the middle of where it does.
        double value = Math.sqrt(firstFall(leads, middle, 0.5) * lastFall(leads, middle, 0.5));
        return new Estimate(value, Math.min(low, value), Math.max(high, value));
    }

    private static double firstFall(List<Lead> leads, ToDoubleFunction<Lead> seconds, double ifOpen) {
        int after = 1;
        while (after < leads.size() - 1 && seconds.applyAsDouble(leads.get(after)) >= 0) {
            after++;
        }
        return fall(leads.get(after - 1), leads.get(after), seconds, ifOpen);
    }

    private static double lastFall(List<Lead> leads, ToDoubleFunction<Lead> seconds, double ifOpen) {
        int before = leads.size() - 2;
        while (before > 0 && seconds.applyAsDouble(leads.get(before)) < 0) {
            before--;
        }
        return fall(leads.get(before), leads.get(before + 1), seconds, ifOpen);
    }

    /**
     * Returns the size at which seconds fall to zero between two.
     *
     * @param ifOpen how far between them it is, from 0 to 1, where that can't be read off, because it is not known by how
     *     much one is ahead that comes alone
     */
    private static double fall(Lead before, Lead after, ToDoubleFunction<Lead> seconds, double ifOpen) {
        double from = seconds.applyAsDouble(before);
        double to = seconds.applyAsDouble(after);
        double share = from > 0 && to < 0 && Double.isFinite(from - to) ? from / (from - to) : ifOpen;
        return before.bytes() + share * (after.bytes() - before.bytes());
    }
}
