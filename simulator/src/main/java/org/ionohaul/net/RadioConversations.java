package org.ionohaul.net;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.engine.Engine;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Medium;
import org.ionohaul.link.Message;
import org.ionohaul.session.Cargo;
import org.ionohaul.session.Doorkeeper;
import org.ionohaul.session.Session;
import org.ionohaul.session.SessionParts;
import org.ionohaul.session.SessionTrace;
import org.jspecify.annotations.Nullable;

/**
 * Conversations that are sessions on the air, any number at once on each channel, all heard by whoever can hear them.
 *
 * <p>The gateway answers one caller at a time with each of its radios. A caller who finds it busy is not answered; its call
 * disturbs as any burst does. A station that calls anew drops what was left of its last session; the gateway, which may not have
 * noticed, keeps holding that one until it hears nothing for long enough or the new call reaches it. A message that is through but not
 * confirmed is not sent again: the offer would be answered by "I have it". Stations listen for the gateway on its first channel.
 */
public final class RadioConversations implements Conversations {
    /** How often a caller looks whether its last burst has left. */
    private static final long TAIL_NANOS = 250_000_000L;

    /** Makes what a session is made of. */
    public interface Pairing {
        /**
         * Returns the parts of a session.
         *
         * @param cargo what it is to move, of the caller first
         * @param ether how the stations of its channel hear each other
         * @param trace who watches
         */
        SessionParts parts(Call call, Cargo cargo, NetEther ether, SessionTrace trace);
    }

    private final Engine engine;
    private final GatewayRules rules;
    private final Pairing pairing;
    private final List<NetEther> ethers;
    private final List<Medium> media;
    private final List<AirLog> logs;
    private final @Nullable Talk[] atStation;
    private final @Nullable Talk[] atRadio;
    private int refusals;
    private int cutOff;
    private int calls;

    /**
     * Sets up quiet channels.
     *
     * @param ether of each channel; they differ in what outsiders do, at most
     * @param countsFromNanos from when on the logs count
     * @param countsUntilNanos until when
     * @param keepsAll whether to keep every burst, for a picture
     */
    public RadioConversations(
            Engine engine,
            GatewayRules rules,
            Pairing pairing,
            NetEther ether,
            long countsFromNanos,
            long countsUntilNanos,
            boolean keepsAll) {
        this.engine = engine;
        this.rules = rules;
        this.pairing = pairing;
        int stations = ether.audibility().stations();
        ethers = IntStream.range(0, rules.channels()).mapToObj(it -> ether).toList();
        media = ethers.stream().map(it -> new Medium(engine, it, stations)).toList();
        logs = IntStream.range(0, rules.channels())
                .mapToObj(it -> new AirLog(engine, it, ether, countsFromNanos, countsUntilNanos, keepsAll))
                .toList();
        atStation = new @Nullable Talk[stations];
        atRadio = new @Nullable Talk[rules.hasRadioEach() ? rules.channels() : 1];
    }

    @Override
    public boolean isFree(int station, int channel) {
        Talk talk = station == Net.GATEWAY ? atRadio[radio(channel)] : atStation[station];
        return (talk == null || talk.isOverFor(station)) && !isOnTheAir(station, channel);
    }

    /** A last word may still be leaving when its session is dropped, and one radio sends one burst at a time. */
    private boolean isOnTheAir(int station, int channel) {
        return (station == Net.GATEWAY && rules.hasRadioEach())
                ? media.get(channel).isOnItsWay(station)
                : media.stream().anyMatch(it -> it.isOnItsWay(station));
    }

    @Override
    public boolean isBusy(int station, int channel, long sinceNanos) {
        return logs.get(channel).wasHeard(station, sinceNanos)
                || ethers.get(channel).audibility().isOccupiedByOthers(station, engine.nowNanos(), engine.nowNanos());
    }

    @Override
    public void begin(Call call, Ending ending) {
        new Talk(call, ending).begin();
    }

    private int radio(int channel) {
        return rules.hasRadioEach() ? channel : 0;
    }

    /** Returns how many calls were begun. */
    public int calls() {
        return calls;
    }

    /** Returns how many calls were heard by the gateway while it was busy with another station. */
    public int refusals() {
        return refusals;
    }

    /** Returns how many sessions the gateway broke off at its limit. */
    public int cutOff() {
        return cutOff;
    }

    /** Returns for how long of the time that counts somebody was on the air, over all channels. */
    public long occupiedNanos() {
        return logs.stream().mapToLong(it -> it.sums().occupiedNanos()).sum();
    }

    /** Returns for how long of it two or more were at once. */
    public long collidedNanos() {
        return logs.stream().mapToLong(it -> it.sums().collidedNanos()).sum();
    }

    /** Returns for how long of it somebody called a gateway that was busy. */
    public long toBusyGatewayNanos() {
        return logs.stream().mapToLong(it -> it.sums().toBusyGatewayNanos()).sum();
    }

    /** Returns every burst, if they were to be kept. */
    public List<AirSpan> spans() {
        return logs.stream().flatMap(it -> it.spans().stream()).toList();
    }

    /** One session, from the call to the last word of either end. */
    private final class Talk implements SessionTrace, Doorkeeper {
        private final Call call;
        private final Ending ending;
        private final List<Letter> letters = new ArrayList<>();
        private final long[] bytes;
        private final Session session;
        private final boolean resumes;
        private boolean wasLinked;
        private boolean isOver;
        private long heldBytes;

        Talk(Call call, Ending ending) {
            this.call = call;
            this.ending = ending;
            letters.addAll(call.fromCaller());
            letters.addAll(call.fromCalled());
            bytes = letters.stream().mapToLong(Letter::missingBytes).toArray();
            Cargo cargo = new Cargo(missing(call.fromCaller()), missing(call.fromCalled()));
            SessionParts parts = pairing.parts(call, cargo, ethers.get(call.channel()), this);
            resumes = parts.rules().resumes();
            session = new Session(parts, media.get(call.channel()), call.caller(), call.called(), this);
        }

        void begin() {
            calls++;
            letters.forEach(Letter::called);
            if (call.caller() == Net.GATEWAY) {
                atRadio[radio(call.channel())] = this;
            } else {
                take(call.caller());
            }
            session.pressSend();
        }

        private static List<Long> missing(List<Letter> letters) {
            return letters.stream().map(Letter::missingBytes).toList();
        }

        /** A station drops what was left of its last session for this one. */
        private void take(int station) {
            Talk before = atStation[station];
            if (before != null) {
                before.session.leave();
            }
            atStation[station] = this;
        }

        boolean isOverFor(int place) {
            return place == call.caller() ? isOver && session.hasEnded() : session.isFarAtRest();
        }

        @Override
        public boolean admits(Message message) {
            return call.called() == Net.GATEWAY ? gatewayAdmits(message) : stationAdmits(message);
        }

        private boolean stationAdmits(Message message) {
            Talk current = atStation[call.called()];
            if (current != this && message == Message.CALL && isFree(call.called(), call.channel())) {
                take(call.called());
            }
            return atStation[call.called()] == this;
        }

        private boolean gatewayAdmits(Message message) {
            int radio = radio(call.channel());
            Talk current = atRadio[radio];
            if (current == this) {
                return true;
            }
            boolean isFree = current == null || current.isOverFor(Net.GATEWAY);
            boolean isOfTheSame = current != null && current.call.caller() == call.caller();
            if (message != Message.CALL || !isTunedIn()) {
                return isFree && message == Message.HANG_UP;
            }
            if (!isFree && !isOfTheSame) {
                refusals++;
                return false;
            }
            if (current != null && !isFree) {
                current.session.breakOffFar();
            }
            atRadio[radio] = this;
            if (rules.sessionLimitNanos() < Long.MAX_VALUE) {
                engine.schedule(rules.sessionLimitNanos(), this::cutOff);
            }
            return true;
        }

        /** Of a call that began before the radio came to its channel it hears too little. */
        private boolean isTunedIn() {
            return rules.hasRadioEach() || rules.scanned(engine.nowNanos()) == call.channel();
        }

        private void cutOff() {
            int radio = radio(call.channel());
            if (atRadio[radio] == this && !session.isFarAtRest()) {
                cutOff++;
                session.breakOffFar();
                atRadio[radio] = null;
            }
        }

        @Override
        public long idleNanos(long usualNanos) {
            return Math.min(usualNanos, rules.idleNanos());
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            Talk current = atRadio[radio(call.channel())];
            boolean isToBusyGateway = burst.message() == Message.CALL
                    && burst.to() == Net.GATEWAY
                    && current != null
                    && current != this
                    && !current.isOverFor(Net.GATEWAY);
            logs.get(call.channel()).onSent(burst.from(), burst.to(), durationNanos, isToBusyGateway);
        }

        @Override
        public void onLinked(long atNanos) {
            wasLinked = true;
            letters.forEach(it -> it.begin(atNanos));
        }

        @Override
        public void onProgress(long total, long atNanos) {
            heldBytes = total;
        }

        @Override
        public void onDelivered(int file, long atNanos) {
            if (!letters.get(file).isDelivered()) {
                letters.get(file).deliver(atNanos);
            }
        }

        /** Nobody knows, so nobody sends it again. */
        @Override
        public void onDeliveredWrong(int file, long atNanos) {
            letters.get(file).giveUp(atNanos);
        }

        @Override
        public void onEnded(org.ionohaul.session.Ending why, long atNanos) {
            engine.schedule(TAIL_NANOS, this::concludeWhenQuiet);
        }

        private void concludeWhenQuiet() {
            if (!session.hasEnded()) {
                engine.schedule(TAIL_NANOS, this::concludeWhenQuiet);
                return;
            }
            isOver = true;
            keepWhatIsHeld();
            ending.onEnded(wasLinked);
        }

        private void keepWhatIsHeld() {
            long left = resumes ? heldBytes : 0;
            for (int file = 0; file < bytes.length; file++) {
                long held = Math.min(left, bytes[file]);
                left -= held;
                if (held > 0 && !letters.get(file).isDelivered()) {
                    letters.get(file).hold(held);
                }
            }
        }
    }
}
