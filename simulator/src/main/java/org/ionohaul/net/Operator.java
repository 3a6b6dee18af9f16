package org.ionohaul.net;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.engine.Timer;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;

/** Whoever calls from one place, by its rules: knows its own messages, what it hears, and how its last calls went. */
final class Operator {
    private final Net net;
    private final int place;
    private final OperatorRules rules;
    private final UniformRandomProvider chance;
    private final Timer look;
    private boolean isTalking;
    private int callsInVain;
    private int channel;

    Operator(Net net, int place, TrialStreams streams) {
        this.net = net;
        this.place = place;
        rules = net.rules().operator(place);
        chance = streams.open(Purpose.OPERATOR, place);
        look = net.engine().timer(this::onLook);
    }

    /** There is something new to call for: looks around, unless it waits or talks already. */
    void look() {
        if (!isTalking && !look.isRunning()) {
            look.start(0);
        }
    }

    /** Returns whether it neither talks nor waits after a call in vain. */
    boolean isReady(int onChannel) {
        return !isTalking && !look.isRunning() && net.conversations().isFree(place, onChannel);
    }

    private void onLook() {
        if (net.rules().discipline().access() == Access.IN_TURN) {
            net.onIdle();
        } else if (!isTalking) {
            callOrWait();
        }
    }

    private void callOrWait() {
        giveUpTheOld();
        Optional<Integer> station = stationToWork();
        if (station.isEmpty()) {
            return;
        }
        long untilTurnNanos = untilTurnNanos();
        if (untilTurnNanos > 0) {
            look.start(untilTurnNanos);
        } else if (!net.conversations().isFree(place, channel) || findsOthers()) {
            changeChannel();
            look.start(draw(rules.holdOff()));
        } else {
            call(station.get(), channel, () -> {});
        }
    }

    private Optional<Integer> stationToWork() {
        if (place != Net.GATEWAY) {
            return net.mail().waitsAt(place) ? Optional.of(place) : Optional.empty();
        }
        return net.mail()
                .firstAtGateway(IntStream.rangeClosed(1, net.stations()).boxed().toList())
                .map(Letter::station);
    }

    private long untilTurnNanos() {
        Discipline discipline = net.rules().discipline();
        return discipline.access() == Access.ROSTER && place != Net.GATEWAY
                ? discipline.untilTurnNanos(place, net.stations(), net.engine().nowNanos())
                : 0;
    }

    private boolean findsOthers() {
        return rules.listensNanos() > 0
                && net.conversations().isBusy(place, channel, net.engine().nowNanos() - rules.listensNanos());
    }

    /**
     * Calls for a station, or is called for itself.
     *
     * @param station whose messages are to be moved
     * @param onChannel from 0
     * @param afterwards what else is to be done when it has ended
     */
    void call(int station, int onChannel, Runnable afterwards) {
        isTalking = true;
        int most = net.rules().discipline().messagesACall();
        List<Letter> fromStation = net.mail().first(station, false, most);
        List<Letter> forStation = net.mail().first(station, true, most);
        List<Letter> taken = new ArrayList<>();
        taken.addAll(fromStation);
        taken.addAll(forStation);
        taken.sort(net.rules().discipline().order().comparator());
        List<Letter> first = taken.subList(0, Math.min(most, taken.size()));
        fromStation = fromStation.stream().filter(first::contains).toList();
        forStation = forStation.stream().filter(first::contains).toList();
        boolean isGateway = place == Net.GATEWAY;
        Conversations.Call call = new Conversations.Call(
                place,
                isGateway ? station : Net.GATEWAY,
                onChannel,
                isGateway ? forStation : fromStation,
                isGateway ? fromStation : forStation);
        net.conversations().begin(call, wasAnswered -> {
            onEnded(station, first);
            afterwards.run();
            net.onIdle();
        });
    }

    private void onEnded(int station, List<Letter> called) {
        isTalking = false;
        boolean isAnyDelivered = called.stream().anyMatch(Letter::isDelivered);
        callsInVain = isAnyDelivered ? 0 : callsInVain + 1;
        long waitNanos;
        if (isAnyDelivered) {
            waitNanos = net.rules().discipline().access() == Access.IN_TURN ? 0 : draw(rules.holdOff());
        } else if (callsInVain >= rules.mostCalls()) {
            called.forEach(it -> it.giveUp(net.engine().nowNanos()));
            callsInVain = 0;
            waitNanos = draw(rules.holdOff());
        } else {
            changeChannel();
            waitNanos = Math.round(draw(rules.redial()) * Math.pow(rules.redialGrowth(), callsInVain - 1));
        }
        net.clear(station);
        if (waitNanos > 0) {
            look.start(waitNanos);
        }
    }

    private void giveUpTheOld() {
        long nowNanos = net.engine().nowNanos();
        boolean isForEver = rules.patienceNanos() == Long.MAX_VALUE;
        int first = place == Net.GATEWAY ? 1 : place;
        int last = place == Net.GATEWAY ? net.stations() : place;
        for (int station = first; station <= last && !isForEver; station++) {
            net.mail().first(station, place == Net.GATEWAY, Integer.MAX_VALUE).stream()
                    .filter(it -> nowNanos - it.writtenNanos() >= rules.patienceNanos())
                    .forEach(it -> it.giveUp(nowNanos));
            net.clear(station);
        }
    }

    private void changeChannel() {
        if (rules.changesChannel()) {
            channel = (channel + 1) % net.rules().gateway().channels();
        }
    }

    private long draw(Wait wait) {
        return wait.at(chance.nextDouble());
    }
}
