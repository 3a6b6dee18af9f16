package org.ionohaul.engine;

import java.util.concurrent.TimeUnit;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;
import umontreal.ssj.simevents.eventlist.BinaryTree;
import umontreal.ssj.simevents.eventlist.DoublyLinked;
import umontreal.ssj.simevents.eventlist.EventList;

/**
 * The same stop-and-wait loop on this engine and on SSJ 3.3.2, a general-purpose simulation library, each in the form its
 * guide recommends: a frame takes 1 s to arrive and is lost with probability 0.2, its acknowledgement takes 0.1 s and is
 * lost with probability 0.1, the sender repeats after 1.5 s of silence. A score is the time of one frame sent: an
 * arrival, a timer started, and mostly an acknowledgement and a timer stopped; without the timer where the name says
 * bare: a loss then leads to the repetition directly.
 *
 * <p>Both draw from the same kind of generator, so the ratio of the scores in one run compares the engines.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class StopAndWaitBenchmark {
    private static final int FRAMES = 100_000;
    private static final double FRAME_LOSS = 0.2;
    private static final double ACKNOWLEDGEMENT_LOSS = 0.1;
    private static final long SECOND = 1_000_000_000L;

    private final UniformRandomProvider random = new TrialStreams(9, 0).openBlock(Purpose.DECODING, 0, 0);

    /** This engine. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public long ionohaul() {
        return new OurLoop(true).run();
    }

    /** This engine, without the timer. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public long ionohaulBare() {
        return new OurLoop(false).run();
    }

    /** SSJ with its default event list, a splay tree. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double ssjSplayTree() {
        return new SsjLoop(new Simulator(), true).run();
    }

    /** SSJ with its default event list, without the timer. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double ssjSplayTreeBare() {
        return new SsjLoop(new Simulator(), false).run();
    }

    /** SSJ with a doubly linked list, its fastest for few events. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double ssjLinkedList() {
        return new SsjLoop(withList(new DoublyLinked()), true).run();
    }

    /** SSJ with a doubly linked list, without the timer. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double ssjLinkedListBare() {
        return new SsjLoop(withList(new DoublyLinked()), false).run();
    }

    /** SSJ with a binary tree. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public double ssjBinaryTree() {
        return new SsjLoop(withList(new BinaryTree()), true).run();
    }

    private static Simulator withList(EventList list) {
        Simulator simulator = new Simulator();
        simulator.init(list);
        return simulator;
    }

    private final class OurLoop {
        private final Engine engine = new Engine();
        private final Timer silence = engine.timer(this::send);
        private final Action arrival = this::onFrame;
        private final Action answer = this::onAcknowledgement;
        private final boolean hasTimer;
        private int sent;

        OurLoop(boolean hasTimer) {
            this.hasTimer = hasTimer;
        }

        long run() {
            send();
            engine.run();
            return engine.nowNanos();
        }

        private void send() {
            if (sent++ < FRAMES) {
                engine.schedule(SECOND, arrival);
                if (hasTimer) {
                    silence.start(3 * SECOND / 2);
                }
            }
        }

        private void onFrame() {
            if (random.nextDouble() >= FRAME_LOSS) {
                engine.schedule(SECOND / 10, answer);
            } else if (!hasTimer) {
                send();
            }
        }

        private void onAcknowledgement() {
            if (random.nextDouble() >= ACKNOWLEDGEMENT_LOSS) {
                silence.stop();
                send();
            } else if (!hasTimer) {
                send();
            }
        }
    }

    private final class SsjLoop {
        private final Simulator simulator;
        private final Event arrival;
        private final Event answer;
        private final Event silence;
        private final boolean hasTimer;
        private int sent;

        SsjLoop(Simulator simulator, boolean hasTimer) {
            this.simulator = simulator;
            this.hasTimer = hasTimer;
            arrival = new Step(simulator, this::onFrame);
            answer = new Step(simulator, this::onAcknowledgement);
            silence = new Step(simulator, this::send);
        }

        double run() {
            simulator.init();
            new Step(simulator, this::send).schedule(0);
            simulator.start();
            return simulator.time();
        }

        private void send() {
            if (sent++ < FRAMES) {
                arrival.schedule(1);
                if (hasTimer) {
                    silence.schedule(1.5);
                }
            }
        }

        private void onFrame() {
            if (random.nextDouble() >= FRAME_LOSS) {
                answer.schedule(0.1);
            } else if (!hasTimer) {
                send();
            }
        }

        private void onAcknowledgement() {
            if (random.nextDouble() >= ACKNOWLEDGEMENT_LOSS) {
                if (hasTimer) {
                    silence.cancel();
                }
                send();
            } else if (!hasTimer) {
                send();
            }
        }
    }

    private static final class Step extends Event {
        private final Runnable action;

        Step(Simulator simulator, Runnable action) {
            super(simulator);
            this.action = action;
        }

        @Override
        public void actions() {
            action.run();
        }
    }
}
