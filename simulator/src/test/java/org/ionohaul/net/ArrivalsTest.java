package org.ionohaul.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.ionohaul.engine.Engine;
import org.ionohaul.random.TrialStreams;
import org.junit.jupiter.api.Test;

/** Messages are written when and as long as their kind says; tolerances are four standard errors. */
final class ArrivalsTest {
    private static final int STATIONS = 400;
    private static final double WATCHED_SECONDS = 3600;

    private static List<Letter> written(MessageKind kind) {
        OperatorRules operator =
                new OperatorRules(0, new Wait(0, 0), new Wait(0, 0), 1, 1, Long.MAX_VALUE, OptionalInt.empty(), false);
        NetRules rules = new NetRules(
                Collections.nCopies(STATIONS, new NetRules.Member(operator, List.of(kind))),
                new GatewayRules(1, false, 1, Long.MAX_VALUE, Long.MAX_VALUE, false),
                operator,
                new Discipline(Access.IN_TURN, Order.FIRST_COME, 1, 1));
        Engine engine = new Engine();
        return new Net(rules, engine, new IdealService(engine, 1e12), new TrialStreams(31, 0))
                .run(Math.round(WATCHED_SECONDS * 1e9));
    }

    private static MessageKind kind(MessageKind.Sizes sizes, Arrivals arrivals) {
        return new MessageKind("it", false, 1, sizes, arrivals, List.of());
    }

    @Test
    void byChanceAsManyAsTheRateSaysAndAnyMomentAlike() {
        List<Letter> letters = written(kind(it -> 100, new Arrivals.Poisson(2)));
        double expected = 2.0 * STATIONS;
        assertEquals(expected, letters.size(), 4 * Math.sqrt(expected));
        double squares = 0;
        for (int station = 1; station <= STATIONS; station++) {
            int number = station;
            double count = letters.stream().filter(it -> it.station() == number).count();
            squares += (count - 2) * (count - 2) / STATIONS;
        }
        // Of a Poisson number with mean 2 the fourth central moment is 2 + 3 * 4.
        assertEquals(
                2, squares, 4 * Math.sqrt((14.0 - 4) / STATIONS), "a station's number has the variance of its mean");
        double mean = letters.stream()
                .mapToDouble(it -> it.writtenNanos() * 1e-9)
                .average()
                .orElseThrow();
        assertEquals(WATCHED_SECONDS / 2, mean, 4 * WATCHED_SECONDS / Math.sqrt(12 * expected));
    }

    @Test
    void byScheduleAtEachOfItsTimes() {
        List<Letter> letters = written(kind(it -> 100, new Arrivals.Schedule(List.of(60.0, 1800.0, 4000.0))));
        assertEquals(2 * STATIONS, letters.size(), "the last time is beyond the end");
        assertTrue(letters.stream()
                .allMatch(it -> it.writtenNanos() == 60_000_000_000L || it.writtenNanos() == 1_800_000_000_000L));
    }

    @Test
    void afterAnEventOneAtEachStationAnyMomentAlike() {
        List<Letter> letters = written(kind(it -> 100, new Arrivals.AfterEvent(600, 900)));
        assertEquals(
                STATIONS, letters.stream().mapToInt(Letter::station).distinct().count());
        assertEquals(STATIONS, letters.size());
        double[] seconds =
                letters.stream().mapToDouble(it -> it.writtenNanos() * 1e-9).toArray();
        double sum = 0;
        for (double at : seconds) {
            assertTrue(at >= 600 && at <= 1500);
            sum += at;
        }
        assertEquals(1050, sum / STATIONS, 4 * 900 / Math.sqrt(12.0 * STATIONS));
    }

    @Test
    void theNextOneAPauseAfterTheLastWasThrough() {
        List<Letter> letters = written(kind(it -> 100, new Arrivals.WhenThrough(300)));
        double expected = STATIONS * WATCHED_SECONDS / 300;
        assertEquals(expected, letters.size(), 4 * Math.sqrt(expected));
        for (int station = 1; station <= STATIONS; station++) {
            int number = station;
            List<Letter> own =
                    letters.stream().filter(it -> it.station() == number).toList();
            for (int i = 1; i < own.size(); i++) {
                assertTrue(own.get(i).writtenNanos() >= own.get(i - 1).deliveredNanos());
            }
        }
    }

    @Test
    void sizesComeFromTheirDistribution() {
        List<Letter> letters = written(kind(it -> 200 + 400 * it, new Arrivals.Poisson(2)));
        double[] bytes = letters.stream().mapToDouble(Letter::bytes).sorted().toArray();
        assertTrue(bytes[0] >= 200 && bytes[bytes.length - 1] <= 600);
        double error = 400 * 0.5 / Math.sqrt(bytes.length);
        assertEquals(400, bytes[bytes.length / 2], 4 * error + 1, "the middle one");
    }
}
