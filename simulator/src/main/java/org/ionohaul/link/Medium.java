package org.ionohaul.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.engine.Timer;
import org.jspecify.annotations.Nullable;

/**
 * One channel and all stations on it, numbered from 0: carries each burst to every station that it reaches, whoever it is meant
 * for, and remembers who is on the air. Who hears whom, and how well, it asks the {@link Ether}; what a station makes of a
 * burst is the station's own affair.
 */
public final class Medium {
    /** A station's receiver. */
    interface Listener {
        /**
         * A burst has wholly arrived.
         *
         * @param burst what was sent; valid during the call only
         * @param arrivalNanos when its first symbol arrived
         */
        void onArrival(Burst burst, long arrivalNanos);
    }

    private final Engine engine;
    private final Ether ether;
    private final List<Place> places;
    private final Transmissions onAir = new Transmissions();
    private final long longestWayNanos;

    /**
     * Sets up a channel on which nobody listens yet.
     *
     * @param stations how many stations there are, 2 or more
     */
    public Medium(Engine engine, Ether ether, int stations) {
        this.engine = engine;
        this.ether = ether;
        places = IntStream.range(0, stations).mapToObj(it -> new Place()).toList();
        long longest = 0;
        for (int from = 0; from < stations; from++) {
            for (int at = 0; at < stations; at++) {
                if (from != at && ether.reaches(from, at)) {
                    long wayNanos = ether.propagationNanos(from, at);
                    longest = Math.max(longest, wayNanos);
                    places.get(from).way(engine, wayNanos).to.add(places.get(at));
                }
            }
        }
        longestWayNanos = longest;
    }

    /** Returns the engine that runs the stations. */
    public Engine engine() {
        return engine;
    }

    /** Returns how long a signal travels from a station to another, in nanoseconds. */
    public long propagationNanos(int from, int at) {
        return ether.propagationNanos(from, at);
    }

    /** Lets a receiver hear, from now on and beside those before, what arrives at a station. */
    void listen(int station, Listener listener) {
        places.get(station).add(listener);
    }

    /** Lets a receiver hear no more. */
    void ignore(int station, Listener listener) {
        places.get(station).remove(listener);
    }

    /**
     * Puts a burst on the air, whose first symbol leaves now.
     *
     * @param from the station that sends
     * @param burst what it sends; not to be changed before it has arrived everywhere
     * @param durationNanos how long it is on the air
     * @param deafNanos how long after that nobody at the same place hears anything, zero or more
     */
    void transmit(int from, Burst burst, long durationNanos, long deafNanos) {
        long now = engine.nowNanos();
        onAir.forgetWhatHasPassed(now, longestWayNanos);
        onAir.begin(from, burst.to(), now, now + durationNanos);
        places.get(from).hearsFromNanos = now + durationNanos + deafNanos;
        places.get(from).send(burst, durationNanos);
    }

    /** Returns whether a burst of a station has not arrived everywhere yet. */
    public boolean isOnItsWay(int from) {
        return places.get(from).isSending();
    }

    /** Returns from when on a station hears something after what it sent last, in nanoseconds since the trial began. */
    long hearsFromNanos(int at) {
        return places.get(at).hearsFromNanos;
    }

    /** Returns how a station hears another, with all that is and was on the air meanwhile. */
    Reception reception(int from, int at) {
        return ether.reception(from, at, onAir);
    }

    /** Returns whether a station has found the channel occupied without a break since an instant, up to now. */
    boolean isOccupied(int at, long fromNanos) {
        return ether.isOccupied(at, fromNanos, engine.nowNanos(), onAir);
    }

    /**
     * Where one station is: what it sends leaves by the ways, what it hears is told to all who listen there. A station that works
     * several others has a listener for each, but one radio, which is deaf for all while it sends.
     */
    private static final class Place {
        private final List<Way> ways = new ArrayList<>();
        private List<Listener> listeners = List.of();
        private long hearsFromNanos = Long.MIN_VALUE;

        Way way(Engine engine, long wayNanos) {
            for (Way way : ways) {
                if (way.wayNanos == wayNanos) {
                    return way;
                }
            }
            Way way = new Way(engine, wayNanos);
            ways.add(way);
            return way;
        }

        void add(Listener listener) {
            List<Listener> more = new ArrayList<>(listeners);
            more.add(listener);
            listeners = List.copyOf(more);
        }

        void remove(Listener listener) {
            listeners = listeners.stream().filter(it -> it != listener).toList();
        }

        /** Who comes or goes because of a burst does so after it. */
        void hear(Burst burst, long arrivalNanos) {
            List<Listener> present = listeners;
            for (int at = 0; at < present.size(); at++) {
                present.get(at).onArrival(burst, arrivalNanos);
            }
        }

        void send(Burst burst, long durationNanos) {
            for (int way = 0; way < ways.size(); way++) {
                ways.get(way).carry(burst, durationNanos);
            }
        }

        boolean isSending() {
            for (int way = 0; way < ways.size(); way++) {
                if (ways.get(way).arrival.isRunning()) {
                    return true;
                }
            }
            return false;
        }
    }

    /** The way from one station to all others that are equally far: one action of the engine for all of them. */
    private static final class Way {
        private final List<Place> to = new ArrayList<>();
        private final long wayNanos;
        private final Timer arrival;
        private @Nullable Burst burst;

        Way(Engine engine, long wayNanos) {
            this.wayNanos = wayNanos;
            arrival = engine.timer(this::arrive);
        }

        void carry(Burst newBurst, long durationNanos) {
            burst = newBurst;
            arrival.start(durationNanos + wayNanos);
        }

        private void arrive() {
            Burst arrived = Objects.requireNonNull(burst);
            for (int place = 0; place < to.size(); place++) {
                to.get(place).hear(arrived, arrived.startNanos() + wayNanos);
            }
        }
    }
}
