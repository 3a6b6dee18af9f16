package org.ionohaul.net;

import java.util.function.ObjLongConsumer;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.engine.Engine;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/** Writes the messages of one kind at one station. */
final class Writer {
    private static final double HALF_STEP = 0x1.0p-54;
    private static final double HOUR_NANOS = 3600e9;

    private final Engine engine;
    private final MessageKind kind;
    private final UniformRandomProvider sizes;
    private final UniformRandomProvider times;
    private final ZigguratSampler.Exponential exponential;
    private final ObjLongConsumer<MessageKind> written;

    /**
     * Makes a writer.
     *
     * @param number which of the station's kinds it is
     * @param written is told of each message and its bytes
     */
    Writer(
            Engine engine,
            TrialStreams streams,
            int station,
            int number,
            MessageKind kind,
            ObjLongConsumer<MessageKind> written) {
        this.engine = engine;
        this.kind = kind;
        this.written = written;
        sizes = streams.open(Purpose.MESSAGE_SIZES, station, number);
        times = streams.open(Purpose.MESSAGE_TIMES, station, number);
        exponential = ZigguratSampler.Exponential.of(times);
    }

    void begin() {
        if (kind.arrivals() instanceof Arrivals.Schedule schedule) {
            schedule.atSeconds().forEach(it -> engine.schedule(Math.round(1e9 * it), this::write));
        } else if (kind.arrivals() instanceof Arrivals.AfterEvent event) {
            double seconds = event.atSeconds() + times.nextDouble() * event.withinSeconds();
            engine.schedule(Math.round(1e9 * seconds), this::write);
        } else if (kind.arrivals() instanceof Arrivals.Poisson poisson) {
            writeInTurn(poisson);
        } else {
            goOn();
        }
    }

    private void writeInTurn(Arrivals.Poisson poisson) {
        engine.schedule(Math.round(exponential.sample() * HOUR_NANOS / poisson.perHour()), () -> {
            write();
            writeInTurn(poisson);
        });
    }

    /** The last message is through or given up. */
    void goOn() {
        if (kind.arrivals() instanceof Arrivals.WhenThrough pause) {
            engine.schedule(Math.round(1e9 * exponential.sample() * pause.pauseSeconds()), this::write);
        }
    }

    private void write() {
        double bytes = kind.sizes().bytes(sizes.nextDouble() + HALF_STEP);
        written.accept(kind, Math.max(1, Math.round(bytes)));
    }
}
