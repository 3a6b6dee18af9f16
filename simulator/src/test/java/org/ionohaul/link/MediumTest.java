package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.waveform.SteadyReception;
import org.junit.jupiter.api.Test;

/**
 * Stations 0 to 3 on one channel: a link between 0 and 1, another between 2 and 3. A signal travels a millisecond for each step
 * between two numbers; a short burst lasts 100 ms.
 */
final class MediumTest {
    private static final long MILLI = 1_000_000L;
    private static final StationTimes AT_ONCE = new StationTimes(0, 0, 0, 0);

    private final List<String> events = new ArrayList<>();
    private final Set<String> hidden = new TreeSet<>();
    private final Engine engine = new Engine();
    private final Ether ether = new LineOfStations();
    private boolean listensFirst;

    /** Hears everything at 0 dB, or nothing of a burst that any other station but itself has sent into. */
    private final class LineOfStations implements Ether {
        @Override
        public boolean reaches(int from, int at) {
            return !hidden.contains(from + ">" + at);
        }

        @Override
        public long propagationNanos(int from, int at) {
            return MILLI * Math.abs(from - at);
        }

        @Override
        public Reception reception(int from, int at, Transmissions onAir) {
            int heard = 0;
            for (int one = 0; one < onAir.size(); one++) {
                heard += onAir.sender(one) != at && reaches(onAir.sender(one), at) ? 1 : 0;
            }
            return new SteadyReception(heard == 1 ? 0 : -100);
        }

        @Override
        public boolean isOccupied(int at, long fromNanos, long atNanos, Transmissions onAir) {
            for (int one = 0; one < onAir.size(); one++) {
                long wayNanos = propagationNanos(onAir.sender(one), at);
                boolean isHeard = onAir.sender(one) != at
                        && reaches(onAir.sender(one), at)
                        && onAir.startNanos(one) + wayNanos <= atNanos
                        && atNanos < onAir.endNanos(one) + wayNanos;
                if (isHeard) {
                    return true;
                }
            }
            return false;
        }
    }

    private Link link(Medium medium, int near, int far) {
        LinkParts parts = PlainLink.parts(AT_ONCE, PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, listensFirst));
        Link link = new Link(parts, medium, near, far, new LinkTrace() {
            @Override
            public void onOccupied(End at, long atNanos) {
                events.add((at == End.NEAR ? near : far) + " waits at " + atNanos / MILLI);
            }
        });
        for (End end : End.values()) {
            int number = end == End.NEAR ? near : far;
            link.station(end).operate(new Protocol() {
                @Override
                public void onBurst(Burst burst) {
                    events.add(number + " hears " + burst.message() + " of " + burst.from() + " at "
                            + engine.nowNanos() / MILLI);
                }

                @Override
                public void onSilence() {}
            });
        }
        return link;
    }

    @Test
    void aBurstReachesEveryStationButIsTakenOnlyByTheOneItIsMeantFor() {
        Medium medium = new Medium(engine, ether, 4);
        Link link = link(medium, 0, 1);
        medium.listen(2, (burst, arrivalNanos) -> events.add("2 overhears at " + arrivalNanos / MILLI));
        medium.listen(3, (burst, arrivalNanos) -> events.add("3 overhears at " + arrivalNanos / MILLI));
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        engine.run();
        assertEquals(List.of("1 hears CALL of 0 at 101", "2 overhears at 2", "3 overhears at 3"), events);
    }

    @Test
    void twoLinksOnOneChannelDisturbEachOtherWhereTheirBurstsMeet() {
        Medium medium = new Medium(engine, ether, 4);
        Link first = link(medium, 0, 1);
        Link second = link(medium, 2, 3);
        first.station(End.NEAR).answer(Message.CALL, 0, 0);
        engine.schedule(50 * MILLI, () -> second.station(End.NEAR).answer(Message.CALL, 0, 0));
        engine.run();
        assertEquals(List.of(), events);
        engine.schedule(100 * MILLI, () -> first.station(End.NEAR).answer(Message.CALL, 0, 0));
        engine.schedule(300 * MILLI, () -> second.station(End.NEAR).answer(Message.CALL, 0, 0));
        engine.run();
        assertEquals(List.of("1 hears CALL of 0", "3 hears CALL of 2"), withoutTimes());
    }

    @Test
    void whoListensFirstWaitsForABurstOfTheOtherLink() {
        listensFirst = true;
        Medium medium = new Medium(engine, ether, 4);
        Link first = link(medium, 0, 1);
        Link second = link(medium, 2, 3);
        first.station(End.NEAR).answer(Message.CALL, 0, 0);
        engine.schedule(50 * MILLI, () -> second.station(End.NEAR).answer(Message.CALL, 0, 0));
        engine.run();
        assertEquals(List.of("2 waits at 50", "1 hears CALL of 0", "3 hears CALL of 2"), waitsWithTimes());
    }

    /** Station 2 can't hear 0 and so sends into what 1 receives; 3 hears nothing of 0 and receives well. */
    @Test
    void aHiddenStationDoesNotWaitAndSpoilsTheOthersBurst() {
        listensFirst = true;
        hidden.addAll(List.of("0>2", "0>3"));
        Medium medium = new Medium(engine, ether, 4);
        Link first = link(medium, 0, 1);
        Link second = link(medium, 2, 3);
        first.station(End.NEAR).answer(Message.CALL, 0, 0);
        engine.schedule(50 * MILLI, () -> second.station(End.NEAR).answer(Message.CALL, 0, 0));
        engine.run();
        assertEquals(List.of("3 hears CALL of 2 at 151"), events);
    }

    @Test
    void aBurstIsOnItsWayUntilItHasArrivedAtTheFarthestStation() {
        Medium medium = new Medium(engine, ether, 4);
        Link link = link(medium, 0, 1);
        link.station(End.NEAR).answer(Message.CALL, 0, 0);
        engine.runUntil(102 * MILLI);
        assertTrue(medium.isOnItsWay(0));
        engine.run();
        assertFalse(medium.isOnItsWay(0));
    }

    @Test
    void transmissionsAreRememberedAsLongAsTheyCanMeetABurstOnItsWay() {
        Transmissions onAir = new Transmissions();
        onAir.begin(0, 9, 0, 100);
        onAir.begin(1, 9, 10, 20);
        onAir.forgetWhatHasPassed(90, 5);
        assertEquals(2, onAir.size(), "the short one has met the long one");
        onAir.begin(2, 9, 90, 200);
        onAir.forgetWhatHasPassed(110, 5);
        assertEquals(2, onAir.size(), "the short one had passed when station 2 began, the long one had not");
        assertEquals(0, onAir.sender(0));
        assertEquals(100, onAir.endNanos(0));
        assertEquals(2, onAir.sender(1));
        assertEquals(90, onAir.startNanos(1));
        onAir.forgetWhatHasPassed(206, 5);
        assertEquals(0, onAir.size());
    }

    @Test
    void manyTransmissionsAtOnceAreAllRemembered() {
        Transmissions onAir = new Transmissions();
        for (int sender = 0; sender < 20; sender++) {
            onAir.begin(sender, 9, sender, 100);
        }
        assertEquals(20, onAir.size());
        assertEquals(19, onAir.sender(19));
    }

    private List<String> withoutTimes() {
        return events.stream().map(it -> it.replaceAll(" at \\d+", "")).toList();
    }

    private List<String> waitsWithTimes() {
        return events.stream()
                .map(it -> it.contains("hears") ? it.replaceAll(" at \\d+", "") : it)
                .toList();
    }
}
