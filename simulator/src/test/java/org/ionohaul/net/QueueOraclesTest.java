package org.ionohaul.net;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ionohaul.engine.Engine;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/**
 * Where the gateway gives the word at no cost and every message takes just its own time, a net is a queue and must meet
 * queueing theory. Each number is the mean of 30 independent replications, the first tenth of each left out; it may be four
 * standard errors off. Time's unit is the mean service, a second.
 *
 * <p>Sources: Kleinrock, Queueing Systems I (1975), for M/M/1, M/D/1, M/G/1 (Pollaczek-Khinchine) and the finite population
 * (machine repairman); Cobham, "Priority assignment in waiting line problems", Oper. Res. 2 (1954).
 */
final class QueueOraclesTest {
    private static final int REPLICATIONS = 30;
    private static final double WATCHED_SECONDS = 16_000;
    private static final double WARM_UP_SECONDS = 1_600;
    private static final double BYTES = 1_000_000;

    private final List<String> rows = new ArrayList<>();

    @Test
    void anIdealNetIsAQueue() {
        double load = 0.8;
        open("M/M/1 load 0.8", "Kleinrock 1975", load, QueueOraclesTest::exponential, 1, load / (1 - load));
        open("M/D/1 load 0.8", "Kleinrock 1975", load, QueueOraclesTest::constant, 0, load / (1 - load) / 2);
        open(
                "M/G/1 uniform load 0.8",
                "Pollaczek-Khinchine",
                load,
                QueueOraclesTest::uniform,
                1.0 / 3,
                load / (1 - load) * 2 / 3);
        priorities();
        shortFirst();
        for (double thinkSeconds : new double[] {5, 20}) {
            finitePopulation(10, thinkSeconds);
        }
        assertEquals(3 * 2 + 2 + 2 + 2, rows.size());
        NetOracles.assertHold(rows);
    }

    private void open(
            String name, String source, double load, DoubleUnaryOperator service, double variance, double meanWait) {
        assertEquals(load * (1 + variance) / (2 * (1 - load)), meanWait, 1e-12, "Pollaczek-Khinchine");
        List<List<Letter>> runs = runs(Order.FIRST_COME, 5, List.of(poisson("all", 1, service, load / 5)));
        rows.add(NetOracles.row(
                name, "mean wait", source, meanWait, means(runs, it -> true, QueueOraclesTest::waitSeconds)));
        rows.add(NetOracles.row(
                name,
                "share that finds nobody",
                source,
                1 - load,
                means(runs, it -> true, it -> waitSeconds(it) == 0 ? 1 : 0)));
    }

    /** Cobham: the wait of class p is W0 / ((1 - load of those before) (1 - load of those before and its own)). */
    private void priorities() {
        double residual = (0.3 * 2 + 0.4 * 4.0 / 3) / 2;
        List<List<Letter>> runs = runs(
                Order.PRIORITY,
                4,
                List.of(
                        poisson("urgent", 1, QueueOraclesTest::exponential, 0.3 / 4),
                        poisson("other", 2, QueueOraclesTest::uniform, 0.4 / 4)));
        rows.add(NetOracles.row(
                "M/G/1 two priorities",
                "mean wait of the urgent",
                "Cobham 1954",
                residual / 0.7,
                means(runs, it -> it.kind().priority() == 1, QueueOraclesTest::waitSeconds)));
        rows.add(NetOracles.row(
                "M/G/1 two priorities",
                "mean wait of the others",
                "Cobham 1954",
                residual / (0.7 * 0.3),
                means(runs, it -> it.kind().priority() == 2, QueueOraclesTest::waitSeconds)));
    }

    /** Two sizes of half and three halves: shortest first is Cobham's with the sizes as classes. */
    private void shortFirst() {
        double load = 0.8;
        DoubleUnaryOperator twoSizes = probability -> probability < 0.5 ? 0.5 : 1.5;
        double residual = load * (0.25 + 2.25) / 2 / 2;
        double before = load / 2 * 0.5;
        List<List<Letter>> runs = runs(Order.SHORT_FIRST, 4, List.of(poisson("all", 1, twoSizes, load / 4)));
        rows.add(NetOracles.row(
                "M/G/1 shortest first",
                "mean wait of the short",
                "Cobham 1954",
                residual / (1 - before),
                means(runs, it -> it.bytes() < BYTES, QueueOraclesTest::waitSeconds)));
        rows.add(NetOracles.row(
                "M/G/1 shortest first",
                "mean wait of the long",
                "Cobham 1954",
                residual / ((1 - before) * (1 - load)),
                means(runs, it -> it.bytes() > BYTES, QueueOraclesTest::waitSeconds)));
    }

    /** With N sources that think for 1/a and one server of rate 1, P(idle) = 1 / sum of N! / (N - k)! a^k. */
    private void finitePopulation(int machines, double thinkSeconds) {
        double sum = 0;
        double term = 1;
        for (int k = 0; k <= machines; k++) {
            sum += term;
            term *= (machines - k) / thinkSeconds;
        }
        MessageKind kind = new MessageKind(
                "repair", false, 1, it -> BYTES * exponential(it), new Arrivals.WhenThrough(thinkSeconds), List.of());
        List<List<Letter>> runs = runs(Order.FIRST_COME, machines, List.of(kind));
        double watched = WATCHED_SECONDS - WARM_UP_SECONDS;
        rows.add(NetOracles.row(
                String.format(Locale.ROOT, "finite population N=%d think %.0f", machines, thinkSeconds),
                "served a second",
                "Kleinrock 1975",
                1 - 1 / sum,
                runs.stream()
                        .mapToDouble(run -> run.stream()
                                        .filter(it -> it.deliveredNanos() > WARM_UP_SECONDS * 1e9
                                                && it.deliveredNanos() <= WATCHED_SECONDS * 1e9)
                                        .count()
                                / watched)
                        .toArray()));
    }

    private static MessageKind poisson(String name, int priority, DoubleUnaryOperator service, double perSecond) {
        return new MessageKind(
                name,
                false,
                priority,
                it -> BYTES * service.applyAsDouble(it),
                new Arrivals.Poisson(3600 * perSecond),
                List.of());
    }

    /** Each queue has chance of its own, so that the z-scores of different ones are independent. */
    private List<List<Letter>> runs(Order order, int stations, List<MessageKind> kinds) {
        long seed = 1400L + rows.size();
        OperatorRules operator =
                new OperatorRules(0, new Wait(0, 0), new Wait(0, 0), 1, 1, Long.MAX_VALUE, OptionalInt.empty(), false);
        NetRules rules = new NetRules(
                Collections.nCopies(stations, new NetRules.Member(operator, kinds)),
                new GatewayRules(1, false, 1, Long.MAX_VALUE, Long.MAX_VALUE, false),
                operator,
                new Discipline(Access.IN_TURN, order, 1, 1));
        return IntStream.range(0, REPLICATIONS)
                .mapToObj(trial -> {
                    Engine engine = new Engine();
                    Net net = new Net(rules, engine, new IdealService(engine, BYTES), new TrialStreams(seed, trial));
                    return net.run(Math.round(WATCHED_SECONDS * 1e9));
                })
                .toList();
    }

    /** Those that are not begun at the end are left out: a handful of 12,000. */
    private static double[] means(List<List<Letter>> runs, Predicate<Letter> which, ToDoubleFunction<Letter> of) {
        return runs.stream()
                .mapToDouble(run -> run.stream()
                        .filter(which)
                        .filter(it -> it.writtenNanos() > WARM_UP_SECONDS * 1e9
                                && it.writtenNanos() < 0.98 * WATCHED_SECONDS * 1e9
                                && it.begunNanos() < Letter.NEVER)
                        .mapToDouble(of)
                        .average()
                        .orElseThrow())
                .toArray();
    }

    private static double exponential(double probability) {
        return -Math.log1p(-probability);
    }

    private static double constant(double probability) {
        return 1;
    }

    private static double uniform(double probability) {
        return 2 * probability;
    }

    private static double waitSeconds(Letter letter) {
        return (letter.begunNanos() - letter.writtenNanos()) / 1e9;
    }
}
