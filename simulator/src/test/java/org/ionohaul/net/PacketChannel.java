package org.ionohaul.net;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.link.ArqRules;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Chances;
import org.ionohaul.link.Link;
import org.ionohaul.link.LinkParts;
import org.ionohaul.link.LinkTrace;
import org.ionohaul.link.Medium;
import org.ionohaul.link.Message;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.Protocol;
import org.ionohaul.link.Radio;
import org.ionohaul.link.Signals;
import org.ionohaul.link.Station;
import org.ionohaul.link.StationTimes;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;

/**
 * The textbooks' packet radio on the simulator's own medium, ether, stations and demodulator: packets as long as a second come by
 * chance, each to a station that has none, and are sent once to the gateway by a rule of access.
 */
final class PacketChannel {
    static final long PACKET_NANOS = 1_000_000_000L;

    /** Enough that one is always at rest: with 12 packets a second offered, more than 50 at once don't happen. */
    private static final int STATIONS = 60;

    /** How a station goes about a packet. */
    enum Rule {
        AT_ONCE,
        AT_SLOT,
        IF_IDLE,
        WHEN_IDLE
    }

    private final Rule rule;
    private final long propagationNanos;
    private final int groups;
    private final Engine engine = new Engine();
    private final List<Station> stations = new ArrayList<>();
    private final List<Long> begins = new ArrayList<>();
    private final UniformRandomProvider chance;
    private int received;

    /**
     * Makes a channel.
     *
     * @param propagationNanos between any two stations
     * @param groups how many groups of stations there are that don't hear each other
     */
    PacketChannel(Rule rule, long propagationNanos, int groups, long seed) {
        chance = new TrialStreams(seed, 0).open(Purpose.MESSAGE_TIMES, 0);
        this.rule = rule;
        this.propagationNanos = propagationNanos;
        this.groups = groups;
        Medium medium = new Medium(engine, new NetEther(new Groups(), 1, 1), STATIONS + 1);
        TrialStreams streams = new TrialStreams(1, 0);
        for (int number = 1; number <= STATIONS; number++) {
            Link link = new Link(parts(streams), medium, number, Net.GATEWAY, new LinkTrace() {});
            link.station(End.FAR).operate(new Protocol() {
                @Override
                public void onBurst(Burst burst) {
                    received++;
                }

                @Override
                public void onSilence() {}
            });
            stations.add(link.station(End.NEAR));
        }
    }

    /** Returns the share of the time that packets received take, when so many packets a packet's length are offered. */
    double throughput(double offered, double seconds) {
        arrive(ZigguratSampler.Exponential.of(chance, 1 / offered));
        engine.runUntil(Math.round(seconds * 1e9));
        return received / seconds;
    }

    private void arrive(ZigguratSampler.Exponential gap) {
        engine.schedule(Math.round(1e9 * gap.sample()), () -> {
            onPacket();
            arrive(gap);
        });
    }

    private void onPacket() {
        Station station = restingStation();
        switch (rule) {
            case AT_ONCE -> send(station);
            case AT_SLOT ->
                engine.schedule(Math.floorMod(-engine.nowNanos(), PACKET_NANOS), () -> send(restingStation()));
            case IF_IDLE -> {
                if (!station.hearsOthers()) {
                    send(station);
                }
            }
            case WHEN_IDLE -> sendWhenIdle(station);
        }
    }

    /** Looks again when what it hears has passed. */
    private void sendWhenIdle(Station station) {
        long now = engine.nowNanos();
        if (station.hearsOthers()) {
            long passed = begins.stream()
                    .filter(it -> it + propagationNanos <= now)
                    .mapToLong(it -> it + propagationNanos + PACKET_NANOS)
                    .max()
                    .orElseThrow();
            engine.schedule(passed - now, () -> sendWhenIdle(restingStation()));
        } else {
            send(station);
        }
    }

    private void send(Station station) {
        begins.removeIf(it -> it + 3 * PACKET_NANOS < engine.nowNanos());
        begins.add(engine.nowNanos());
        station.answer(Message.CALL, 0, 0);
    }

    /** The group is drawn first: else one that sends would get fewer packets than its share. */
    private Station restingStation() {
        int group = chance.nextInt(groups);
        Station station;
        do {
            station = stations.get(group + groups * chance.nextInt(STATIONS / groups));
        } while (!station.isQuiet());
        return station;
    }

    private static LinkParts parts(TrialStreams streams) {
        FragileWaveform packet = new FragileWaveform(PACKET_NANOS);
        ArqRules rules = new ArqRules(
                ArqScheme.STOP_AND_WAIT,
                1,
                1,
                1,
                PACKET_NANOS,
                Combining.NONE,
                0,
                ArqRules.AnswerToSilence.REPEAT,
                1,
                false,
                0,
                0);
        Radio radio = Radio.of(new StationTimes(0, 0, 0, 0));
        return new LinkParts(
                new ModeSpec(new Signals(List.of(packet), packet, packet, packet), rules, new RatePolicyRules.Fixed(1)),
                radio,
                radio,
                new Chances(
                        streams.open(Purpose.DETECTION, 0),
                        streams.open(Purpose.DECODING, 0),
                        streams.open(Purpose.SNR_ESTIMATE, 0),
                        streams.open(Purpose.DIALLING, 0),
                        streams.open(Purpose.POLICY, 0),
                        streams.open(Purpose.REPLIES, 0)));
    }

    /** Everybody hears the gateway and those of the same group. */
    private final class Groups implements Audibility {
        @Override
        public int stations() {
            return STATIONS + 1;
        }

        @Override
        public Reception reception(int from, int at) {
            return new SteadyReception(20);
        }

        @Override
        public double meanSignal(int from, int at, long atNanos) {
            return from == Net.GATEWAY || at == Net.GATEWAY || from % groups == at % groups ? 100 : 0;
        }

        @Override
        public long propagationNanos(int from, int at) {
            return propagationNanos;
        }

        @Override
        public boolean isOccupiedByOthers(int at, long fromNanos, long untilNanos) {
            return false;
        }
    }
}
