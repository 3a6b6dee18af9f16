package org.ionohaul.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.ionohaul.engine.Engine;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/** Operators obey their rules: conversations here are a script that says who is busy and whose call is in vain. */
final class RulesTest {
    private static final long SECOND = 1_000_000_000L;
    private static final long MINUTE = 60 * SECOND;

    private final Engine engine = new Engine();
    private final List<String> events = new ArrayList<>();
    private long busyUntilNanos;
    private int callsInVain;
    private OperatorRules operator = new OperatorRules(
            3 * SECOND,
            new Wait(10 * SECOND, 10 * SECOND),
            new Wait(20 * SECOND, 20 * SECOND),
            2,
            3,
            Long.MAX_VALUE,
            OptionalInt.empty(),
            false);
    private GatewayRules gateway = new GatewayRules(1, false, SECOND, Long.MAX_VALUE, Long.MAX_VALUE, false);
    private Discipline discipline = new Discipline(Access.FREE, Order.FIRST_COME, MINUTE, 5);

    /** Calls take a second; the first so many are in vain. */
    private final class Script implements Conversations {
        @Override
        public boolean isFree(int station, int channel) {
            return true;
        }

        @Override
        public boolean isBusy(int station, int channel, long sinceNanos) {
            return busyUntilNanos > 0 && sinceNanos < busyUntilNanos;
        }

        @Override
        public void begin(Call call, Ending ending) {
            events.add(call.caller() + " calls " + call.called() + " on " + call.channel() + " at "
                    + engine.nowNanos() / SECOND + " with "
                    + (call.fromCaller().size() + call.fromCalled().size()));
            boolean isInVain = callsInVain-- > 0;
            engine.schedule(SECOND, () -> {
                if (!isInVain) {
                    call.fromCaller().forEach(it -> it.deliver(engine.nowNanos()));
                    call.fromCalled().forEach(it -> it.deliver(engine.nowNanos()));
                }
                ending.onEnded(!isInVain);
            });
        }
    }

    private List<Letter> run(int stations, MessageKind... kinds) {
        NetRules rules = new NetRules(
                Collections.nCopies(stations, new NetRules.Member(operator, List.of(kinds))),
                gateway,
                operator,
                discipline);
        return new Net(rules, engine, new Script(), new TrialStreams(1, 0)).run(60 * MINUTE);
    }

    private static MessageKind at(boolean isForStation, Double... seconds) {
        return new MessageKind("it", isForStation, 1, it -> 100, new Arrivals.Schedule(List.of(seconds)), List.of());
    }

    @Test
    void whoHearsOthersHoldsOffUntilTheyHaveBeenSilentForLongEnough() {
        busyUntilNanos = 25 * SECOND;
        run(1, at(false, 4.0));
        assertEquals(List.of("1 calls 0 on 0 at 34 with 1"), events);
    }

    @Test
    void whoDoesNotListenCallsAtOnce() {
        busyUntilNanos = 25 * SECOND;
        operator = new OperatorRules(
                0, operator.holdOff(), operator.redial(), 2, 3, Long.MAX_VALUE, OptionalInt.empty(), false);
        run(1, at(false, 4.0));
        assertEquals(List.of("1 calls 0 on 0 at 4 with 1"), events);
    }

    @Test
    void eachCallInVainMakesTheWaitLongerUntilAllIsGivenUp() {
        callsInVain = 100;
        List<Letter> letters = run(1, at(false, 0.0));
        assertEquals(
                List.of("1 calls 0 on 0 at 0 with 1", "1 calls 0 on 0 at 21 with 1", "1 calls 0 on 0 at 62 with 1"),
                events);
        assertEquals(63 * SECOND, letters.get(0).givenUpNanos());
        assertEquals(3, events.size());
    }

    @Test
    void whatIsTooOldIsGivenUpWithoutACall() {
        busyUntilNanos = 10 * MINUTE;
        operator = new OperatorRules(
                3 * SECOND, operator.holdOff(), operator.redial(), 2, 3, 5 * MINUTE, OptionalInt.empty(), false);
        List<Letter> letters = run(1, at(false, 0.0));
        assertEquals(List.of(), events);
        assertEquals(5 * MINUTE, letters.get(0).givenUpNanos());
    }

    @Test
    void aBusyChannelOrACallInVainLeadsToTheNextChannel() {
        operator = new OperatorRules(
                3 * SECOND, operator.holdOff(), operator.redial(), 1, 5, Long.MAX_VALUE, OptionalInt.empty(), true);
        gateway = new GatewayRules(2, true, SECOND, Long.MAX_VALUE, Long.MAX_VALUE, false);
        callsInVain = 2;
        run(1, at(false, 0.0));
        assertEquals(
                List.of("1 calls 0 on 0 at 0 with 1", "1 calls 0 on 1 at 21 with 1", "1 calls 0 on 0 at 42 with 1"),
                events);
    }

    @Test
    void mailAtTheGatewayWaitsForTheStationsNextCallOrIsCalledFor() {
        run(1, at(true, 0.0), at(false, 60.0));
        assertEquals(List.of("1 calls 0 on 0 at 60 with 2"), events);
        events.clear();
        gateway = new GatewayRules(1, false, SECOND, Long.MAX_VALUE, Long.MAX_VALUE, true);
        RulesTest called = new RulesTest();
        called.gateway = gateway;
        called.run(1, at(true, 0.0));
        assertEquals(List.of("0 calls 1 on 0 at 0 with 1"), called.events);
    }

    @Test
    void onARosterEachCallsInItsOwnTime() {
        discipline = new Discipline(Access.ROSTER, Order.FIRST_COME, 2 * MINUTE, 5);
        run(3, at(false, 30.0));
        assertEquals(
                List.of("1 calls 0 on 0 at 30 with 1", "2 calls 0 on 0 at 120 with 1", "3 calls 0 on 0 at 240 with 1"),
                events);
    }

    @Test
    void noMoreMessagesAreTakenIntoACallThanAgreedOn() {
        discipline = new Discipline(Access.FREE, Order.FIRST_COME, MINUTE, 2);
        List<Letter> letters = run(1, at(false, 0.0, 0.0, 0.0));
        assertEquals(
                List.of("1 calls 0 on 0 at 0 with 2", "1 calls 0 on 0 at 11 with 1"),
                events.stream().limit(2).toList());
        assertTrue(letters.stream().allMatch(Letter::isDelivered));
    }

    @Test
    void inTurnTheOneWhoseMessageGoesFirstHasTheWord() {
        discipline = new Discipline(Access.IN_TURN, Order.FIRST_COME, MINUTE, 5);
        run(2, at(false, 0.0, 0.5));
        assertEquals(
                4,
                events.stream().mapToInt(it -> it.charAt(it.length() - 1) - '0').sum());
        assertTrue(events.get(0).startsWith("1 calls 0 on 0 at 0"), events.get(0));
        assertTrue(events.get(1).startsWith("2 calls 0 on 0 at 1 with 2"), events.get(1));
    }

    @Test
    void theMostUrgentOrTheShortestOfAStationsMessagesGoesFirst() {
        MessageKind urgent =
                new MessageKind("urgent", false, 1, it -> 900, new Arrivals.Schedule(List.of(0.0)), List.of());
        MessageKind other =
                new MessageKind("other", false, 2, it -> 100, new Arrivals.Schedule(List.of(0.0)), List.of());
        for (Order order : List.of(Order.PRIORITY, Order.SHORT_FIRST, Order.FIRST_COME)) {
            RulesTest test = new RulesTest();
            test.discipline = new Discipline(Access.FREE, order, MINUTE, 1);
            List<Letter> letters = test.run(1, other, urgent);
            String first = letters.stream()
                    .min(Comparator.comparingLong(Letter::deliveredNanos))
                    .orElseThrow()
                    .kind()
                    .name();
            assertEquals(order == Order.PRIORITY ? "urgent" : "other", first, order::toString);
        }
    }
}
