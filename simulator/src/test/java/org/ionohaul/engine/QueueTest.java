package org.ionohaul.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.function.DoubleSupplier;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/**
 * The engine against textbook queues with one server, load 0.8 and mean service time 1 (here 1 s).
 *
 * <p>M/M/1: L = rho / (1 - rho) = 4, W = 5, Wq = 4, P(N >= 5) = rho^5. M/G/1 by Pollaczek and Khinchine: Wq = lambda
 * E[S^2] / (2 (1 - rho)), which is 2 for constant service (M/D/1) and 8/3 for service uniform from 0 to 2. Sources: L.
 * Kleinrock, "Queueing Systems" vol. 1, 1975, sections 3.2 and 5.6.
 *
 * <p>Tolerance: 4 standard errors of the regenerative estimate (M. A. Crane and D. L. Iglehart, 1975), cycles beginning
 * with a customer who finds the server idle.
 */
final class QueueTest {
    private static final double LOAD = 0.8;
    private static final int CUSTOMERS = 2_000_000;
    private static final double SECOND = 1e9;

    @Test
    void markovianQueueWaitsFourServiceTimes() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(8001L);
        ZigguratSampler.Exponential service = ZigguratSampler.Exponential.of(random);
        Server server = simulate(random, service::sample);
        server.waits.assertMean(4);
        server.fiveOrMore.assertMean(Math.pow(LOAD, 5));
    }

    @Test
    void queueWithConstantServiceWaitsHalfAsLong() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(8002L);
        simulate(random, () -> 1).waits.assertMean(2);
    }

    @Test
    void queueWithUniformServiceWaitsAsPollaczekAndKhinchineSay() {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(8003L);
        simulate(random, () -> 2 * random.nextDouble()).waits.assertMean(8.0 / 3);
    }

    private static Server simulate(UniformRandomProvider random, DoubleSupplier service) {
        Engine engine = new Engine();
        ZigguratSampler.Exponential gaps = ZigguratSampler.Exponential.of(random, 1 / LOAD);
        Server server = new Server(engine, gaps::sample, service);
        engine.run();
        return server;
    }

    /** A server with a queue; what each customer waits and finds goes into regenerative averages. */
    private static final class Server {
        private final RegenerativeMean waits = new RegenerativeMean();
        private final RegenerativeMean fiveOrMore = new RegenerativeMean();
        private final Engine engine;
        private final DoubleSupplier gapSeconds;
        private final DoubleSupplier serviceSeconds;
        private final Queue<Long> arrivals = new ArrayDeque<>();
        private final Timer nextArrival;
        private final Timer nextDeparture;
        private int customers;

        Server(Engine engine, DoubleSupplier gapSeconds, DoubleSupplier serviceSeconds) {
            this.engine = engine;
            this.gapSeconds = gapSeconds;
            this.serviceSeconds = serviceSeconds;
            this.nextArrival = engine.timer(this::onArrival);
            this.nextDeparture = engine.timer(this::onDeparture);
            nextArrival.start(0);
        }

        private void onArrival() {
            int present = arrivals.size() + (nextDeparture.isRunning() ? 1 : 0);
            if (present == 0) {
                waits.endCycle();
                fiveOrMore.endCycle();
            }
            // Poisson arrivals see time averages.
            fiveOrMore.add(present >= 5 ? 1 : 0);
            arrivals.add(engine.nowNanos());
            if (present == 0) {
                serve();
            }
            customers++;
            if (customers < CUSTOMERS) {
                nextArrival.start(nanos(gapSeconds));
            }
        }

        private void serve() {
            waits.add((engine.nowNanos() - arrivals.remove()) / SECOND);
            nextDeparture.start(nanos(serviceSeconds));
        }

        private void onDeparture() {
            if (!arrivals.isEmpty()) {
                serve();
            }
        }

        private static long nanos(DoubleSupplier seconds) {
            return Math.round(seconds.getAsDouble() * SECOND);
        }
    }

    /** The ratio estimate of a mean from independent cycles, with its standard error. */
    private static final class RegenerativeMean {
        private double sum;
        private double count;
        private double cycles;
        private double sums;
        private double counts;
        private double squares;
        private double products;
        private double countSquares;

        void add(double value) {
            sum += value;
            count++;
        }

        void endCycle() {
            cycles++;
            sums += sum;
            counts += count;
            squares += sum * sum;
            products += sum * count;
            countSquares += count * count;
            sum = 0;
            count = 0;
        }

        void assertMean(double expected) {
            double mean = sums / counts;
            double spread = squares - 2 * mean * products + mean * mean * countSquares;
            double standardError = Math.sqrt(spread / cycles) / (counts / cycles) / Math.sqrt(cycles);
            assertEquals(expected, mean, 4 * standardError);
            // The tolerance must be tight enough to tell a wrong queue.
            assertEquals(0, standardError, 0.01 * expected);
        }
    }
}
