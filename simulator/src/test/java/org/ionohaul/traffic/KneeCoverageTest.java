package org.ionohaul.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.GoldenFile;
import org.ionohaul.net.Arrivals;
import org.ionohaul.net.MessageKind;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.traffic.Backlog.Verdict;
import org.ionohaul.trial.NetTrial;
import org.junit.jupiter.api.Test;

/**
 * How often whole studies call a queue that keeps up one that piles up, and the reverse, at utilisations that are known: messages
 * written by chance wait for one server (d = max(written, d before) + service). Published as {@code knee-coverage.csv}.
 *
 * <p>Either claim rests on one end of an interval of 95 %, so that it may be wrong in 25 of 1000 studies: of 240 in 6 give or
 * take four standard errors of 2.4. Services are constant, exponential, or vary as much as is allowed for (squared coefficient of variation of 3).
 */
final class KneeCoverageTest {
    private static final int STUDIES = 240;
    private static final int TRIALS = 50;
    private static final double MOST_WRONG = 6 + 4 * 2.4;
    private static final double END_SECONDS = 10_000;
    private static final MessageKind KIND =
            new MessageKind("made up", false, 1, it -> 100, new Arrivals.Poisson(1), List.of());

    private final List<String> rows = new ArrayList<>(
            List.of("queue,utilisation,written in the second half,burst before,studies,piles up,keeps up,open"));

    @Test
    void aQueueIsSeldomCalledWhatItIsNot() {
        for (int written : new int[] {25, 100}) {
            for (double load : new double[] {0.5, 0.8, 0.9, 1, 1.1, 1.25}) {
                held(row("M/D/1", KneeCoverageTest::constant, load, written, 0), load);
                held(row("M/M/1", KneeCoverageTest::exponential, load, written, 0), load);
            }
        }
        for (double load : new double[] {0.9, 1, 1.1}) {
            held(row("M/D/1", KneeCoverageTest::constant, load, 400, 0), load);
        }
        for (double load : new double[] {0.8, 1, 1.1, 1.25}) {
            held(row("M/M/1", KneeCoverageTest::exponential, load, 25, 14), load);
            held(row("M/M/1", KneeCoverageTest::exponential, load, 100, 14), load);
        }
        for (double load : new double[] {0.8, 0.9, 1, 1.1, 1.25}) {
            held(row("M/G/1 c2=3", KneeCoverageTest::varied, load, 25, 0), load);
            held(row("M/G/1 c2=3", KneeCoverageTest::varied, load, 100, 0), load);
        }
        new GoldenFile(Path.of("..", "results", "reference", "knee-coverage.csv"))
                .assertHolds(String.join("\n", rows) + "\n");
    }

    private static int count(Map<Verdict, Integer> counts, Verdict verdict) {
        return counts.getOrDefault(verdict, 0);
    }

    /** At its limit a queue neither keeps up nor fails to: either claim is wrong. */
    private void held(Map<Verdict, Integer> counts, double load) {
        String row = rows.get(rows.size() - 1);
        assertTrue(load > 1 || count(counts, Verdict.PILES_UP) <= MOST_WRONG, row);
        assertTrue(load < 1 || count(counts, Verdict.KEEPS_UP) <= MOST_WRONG, row);
    }

    @Test
    void farFromItsLimitAQueueIsCalledWhatItIs() {
        assertTrue(count(row("M/D/1", KneeCoverageTest::constant, 0.5, 100, 0), Verdict.KEEPS_UP) > 0.95 * STUDIES);
        assertTrue(count(row("M/D/1", KneeCoverageTest::constant, 1.25, 100, 0), Verdict.PILES_UP) > 0.95 * STUDIES);
    }

    /** E|x + z| by summing over z on a fine grid. */
    @Test
    void aQueueAtItsLimitComesToTheMeanOfAFoldedNormal() {
        for (double x : new double[] {0, 1, 7, 30}) {
            double sum = 0;
            double weights = 0;
            for (double z = -8; z <= 8; z += 1e-3) {
                double weight = Math.exp(-z * z / 2);
                sum += weight * Math.abs(x + 7 * z);
                weights += weight;
            }
            assertEquals(sum / weights, Backlog.atLimit(x, 7), 1e-5);
        }
        assertEquals(3, Backlog.atLimit(3, 0));
    }

    private static double constant(double probability) {
        return 1;
    }

    private static double exponential(double probability) {
        return -Math.log1p(-probability);
    }

    /** Of ten services nine take 1 - a and one 1 + 9 a: a variance of 9 a^2. */
    private static double varied(double probability) {
        return probability < 0.9 ? 1 - Math.sqrt(1 / 3.0) : 1 + 9 * Math.sqrt(1 / 3.0);
    }

    private Map<Verdict, Integer> row(String queue, DoubleUnaryOperator service, double load, int written, int burst) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (int study = 0; study < STUDIES; study++) {
            List<NetTrial> trials = new ArrayList<>();
            for (int trial = 0; trial < TRIALS; trial++) {
                UniformRandomProvider chance = new TrialStreams(1000L * written + Math.round(100 * load), trial)
                        .open(Purpose.MESSAGE_TIMES, study);
                trials.add(trial(chance, service, load, written, burst));
            }
            counts.merge(Backlog.of(trials, it -> true, 0, END_SECONDS).verdict(), 1, Integer::sum);
        }
        rows.add(String.format(
                Locale.ROOT,
                "%s,%.2f,%d,%d,%d,%d,%d,%d",
                queue,
                load,
                written,
                burst,
                STUDIES,
                count(counts, Verdict.PILES_UP),
                count(counts, Verdict.KEEPS_UP),
                count(counts, Verdict.OPEN)));
        return counts;
    }

    /** Messages of the burst are written within the first sixth. */
    private static NetTrial trial(
            UniformRandomProvider chance, DoubleUnaryOperator service, double load, int written, int burst) {
        double gapSeconds = END_SECONDS / 2 / written;
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < burst; i++) {
            times.add(chance.nextDouble() * END_SECONDS / 6);
        }
        double at = 0;
        while (at < END_SECONDS) {
            at -= gapSeconds * Math.log1p(-chance.nextDouble());
            times.add(at);
        }
        double[] sorted = times.stream().mapToDouble(it -> it).sorted().toArray();
        List<NetTrial.Message> messages = new ArrayList<>(sorted.length);
        double through = 0;
        for (double writtenSeconds : Arrays.copyOf(sorted, sorted.length - 1)) {
            double begun = Math.max(through, writtenSeconds);
            through = begun + load * gapSeconds * service.applyAsDouble(chance.nextDouble());
            messages.add(new NetTrial.Message(
                    KIND,
                    1,
                    100,
                    nanos(writtenSeconds),
                    nanos(begun),
                    through <= END_SECONDS ? nanos(through) : NetTrial.NEVER,
                    NetTrial.NEVER,
                    1));
        }
        return new NetTrial(messages, 0, 0, 0, 0, 0, 0, List.of());
    }

    private static long nanos(double seconds) {
        return Math.round(1e9 * seconds);
    }
}
