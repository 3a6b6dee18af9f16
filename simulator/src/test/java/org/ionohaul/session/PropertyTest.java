package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqRules.AnswerToSilence;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.link.StationTimes;
import org.ionohaul.random.Purpose;
import org.ionohaul.random.TrialStreams;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.Combining;
import org.junit.jupiter.api.Test;

/** What must hold whatever the rules: tried with hundreds of rule sets drawn at random. */
final class PropertyTest {
    private static final int RULE_SETS = 1000;

    @Test
    void noRulesLoseAByteOrAMomentOrStandStill() {
        Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        Set<Ending> endings = EnumSet.noneOf(Ending.class);
        for (int set = 0; set < RULE_SETS; set++) {
            Bench bench = drawn(set);
            Witness witness = new Witness(bench.cargo);
            bench.trace = witness;
            SessionResult result = bench.run(set, set % 8 == 0 ? 3 * 60 * Bench.SECOND : 30 * Bench.HOUR);
            check(bench, result, witness, "rule set " + set);
            checkEnding(bench, result, witness, "rule set " + set);
            outcomes.merge(result.outcome(), 1, Integer::sum);
            endings.add(result.ending());
        }
        assertEquals(5, outcomes.size(), "every outcome occurs: " + outcomes);
        assertEquals(EnumSet.allOf(Ending.class), endings);
    }

    /** The reason that the station gives agrees with what a witness of both ends has seen. */
    private static void checkEnding(Bench bench, SessionResult result, Witness witness, String name) {
        Ending ending = result.ending();
        assertEquals(!witness.sawLink, ending.isWithoutLink(), name);
        boolean isOutOfPatience = ending == Ending.OUT_OF_PATIENCE || ending == Ending.NEVER_LINKED_OUT_OF_PATIENCE;
        assertEquals(bench.patience == result.endedNanos(), isOutOfPatience, name);
        switch (ending) {
            case COMPLETED, HANG_UP_UNANSWERED, NOTHING_MORE_HEARD ->
                assertTrue(result.deliveredNanos().isPresent(), name);
            case LINK_LOST -> assertTrue(result.linksLost() > 0, name);
            default -> {}
        }
    }

    private static void check(Bench bench, SessionResult result, Witness witness, String name) {
        assertEquals(result.endedNanos(), result.budget().totalNanos(), name);
        assertFalse(witness.timeRanBackwards, name);
        long total = 0;
        for (int file = 0; file < bench.cargo.files(); file++) {
            total += bench.cargo.bytes(file);
            if (result.filesDeliveredNanos().get(file).isPresent()) {
                assertTrue(witness.holdsAll(file), name + ": file " + file + " delivered with a byte missing");
            }
        }
        ProgressCurve progress = result.progress();
        for (int at = 1; at < progress.size(); at++) {
            assertTrue(progress.atNanos(at) >= progress.atNanos(at - 1), name);
            assertTrue(progress.heldBytes(at) > progress.heldBytes(at - 1), name);
        }
        if (result.deliveredNanos().isPresent()) {
            assertEquals(total, progress.heldBytes(progress.size() - 1), name);
            assertEquals(progress.reachedNanos(total), result.deliveredNanos().getAsLong(), name);
        } else {
            assertEquals(ProgressCurve.NEVER, progress.reachedNanos(total), name);
        }
        if (result.confirmedNanos().isPresent()) {
            assertTrue(
                    result.confirmedNanos().getAsLong()
                            >= result.deliveredNanos().orElseThrow(),
                    name);
        }
        if (result.closedNanos().isPresent()) {
            assertTrue(
                    result.closedNanos().getAsLong() >= result.confirmedNanos().orElseThrow(), name);
        }
        long airtime =
                result.dataRates().stream().mapToLong(DataRateUse::airtimeNanos).sum();
        assertTrue(airtime <= 30 * Bench.HOUR, name);
    }

    private static Bench drawn(int set) {
        UniformRandomProvider random = new TrialStreams(77, set).open(Purpose.UNCERTAIN_INPUT, 0);
        Bench bench = new Bench();
        bench.scheme = oneOf(random, ArqScheme.values());
        bench.window = random.nextInt(1, 20);
        bench.shortOver = random.nextInt(1, 12);
        bench.longOver = bench.shortOver + random.nextInt(12);
        bench.longestOver = random.nextLong(100 * Bench.MILLI, 30 * Bench.SECOND);
        bench.combining = oneOf(random, Combining.values());
        bench.store = random.nextInt(10);
        AnswerToSilence answer = oneOf(random, AnswerToSilence.values());
        bench.answerToSilence = bench.scheme == ArqScheme.ALTERNATING ? AnswerToSilence.POLL : answer;
        bench.silencesToLost = random.nextInt(1, 8);
        bench.listensFirst = random.nextBoolean();
        double busy = random.nextDouble() * 0.8;
        bench.watch =
                (end, fromNanos, atNanos) -> Math.floorMod(atNanos / Bench.SECOND * 2654435761L, 1000) < busy * 1000;
        bench.margin = random.nextLong(Bench.SECOND);
        bench.propagation = random.nextLong(20 * Bench.MILLI);
        bench.near = times(random);
        bench.far = times(random);
        List<PlainWaveform> dataRates = new ArrayList<>();
        int count = random.nextInt(1, 7);
        double loss = random.nextDouble() * 0.6;
        for (int dataRate = 0; dataRate < count; dataRate++) {
            long preamble = random.nextLong(500 * Bench.MILLI);
            dataRates.add(
                    PlainWaveform.losing(random.nextInt(1, 300), preamble, random.nextLong(1, Bench.SECOND), loss));
            loss = 1 - (1 - loss) * random.nextDouble(0.6, 1);
        }
        bench.dataRates = dataRates;
        bench.acknowledgement = PlainWaveform.losing(0, 100, 300 * Bench.MILLI, random.nextDouble() * 0.4);
        bench.call = PlainWaveform.losing(0, 100, 2 * Bench.SECOND, random.nextDouble() * 0.6);
        bench.control = PlainWaveform.losing(0, 100, 300 * Bench.MILLI, random.nextDouble() * 0.4);
        bench.ratePolicy = ratePolicy(random, random.nextInt(1, count + 1));
        bench.rules = new SessionRules(
                random.nextInt(1, 5),
                random.nextLong(5 * Bench.SECOND),
                random.nextInt(4),
                random.nextInt(1, 6),
                random.nextBoolean(),
                random.nextInt(30),
                random.nextBoolean(),
                random.nextLong(60 * Bench.SECOND));
        bench.cargo = new Cargo(files(random, 1), files(random, random.nextInt(3)));
        bench.patience = random.nextInt(4) == 0 ? random.nextLong(Bench.HOUR) + 1 : Long.MAX_VALUE;
        return bench;
    }

    private static <T> T oneOf(UniformRandomProvider random, T[] choices) {
        return List.of(choices).get(random.nextInt(choices.length));
    }

    private static StationTimes times(UniformRandomProvider random) {
        long most = 200 * Bench.MILLI;
        return new StationTimes(
                random.nextLong(most), random.nextLong(most), random.nextLong(most), random.nextLong(most));
    }

    private static List<Long> files(UniformRandomProvider random, int count) {
        List<Long> files = new ArrayList<>();
        for (int file = 0; file < count; file++) {
            files.add(random.nextLong(1, random.nextBoolean() ? 400 : 20_000));
        }
        return files;
    }

    private static RatePolicyRules ratePolicy(UniformRandomProvider random, int start) {
        return switch (random.nextInt(7)) {
            case 0 -> new RatePolicyRules.Fixed(start);
            case 1 ->
                new RatePolicyRules.Count(start, random.nextInt(1, 5), random.nextInt(1, 4), 0.5, random.nextBoolean());
            case 2 -> new RatePolicyRules.ErrorRate(start, 0.1, 0.4, 0.5);
            case 3 -> new RatePolicyRules.SnrLookup(start, 0.1, 1, 0.5, 2);
            case 4 -> new RatePolicyRules.ExpectedAirtime(start, 0.1, 0.3);
            case 5 -> new RatePolicyRules.LatentSnr(start, 6, 0.5, 2);
            default -> new RatePolicyRules.Omniscient(start);
        };
    }

    /** Sees what is on the air and keeps its own account of what each receiver can hold. */
    private static final class Witness implements SessionTrace {
        private final Cargo cargo;
        private final boolean[][] held;
        private boolean sawLink;
        private long lastNanos;
        private boolean timeRanBackwards;

        Witness(Cargo cargo) {
            this.cargo = cargo;
            held = new boolean[cargo.files()][];
            for (int file = 0; file < held.length; file++) {
                held[file] = new boolean[(int) cargo.bytes(file)];
            }
        }

        boolean holdsAll(int file) {
            for (boolean isHeld : held[file]) {
                if (!isHeld) {
                    return false;
                }
            }
            return true;
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            tick(burst.startNanos());
            if (burst.message() == Message.OVER) {
                assertTrue(burst.frames() >= 1);
                assertTrue(burst.newFrames() <= burst.frames());
                for (int frame = 0; frame < burst.frames(); frame++) {
                    assertTrue(burst.frameStart(frame) < burst.frameEnd(frame));
                    assertTrue(burst.frameEnd(frame) <= cargo.bytes(burst.number()));
                }
            }
        }

        @Override
        public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
            tick(atNanos);
            if (isHeard && burst.message() == Message.OVER) {
                assertNotEquals(0, burst.frames());
                for (int frame = 0; frame < burst.frames(); frame++) {
                    mark(burst, frame);
                }
            }
        }

        @Override
        public void onLinked(long atNanos) {
            sawLink = true;
        }

        private void mark(Burst burst, int frame) {
            for (long at = burst.frameStart(frame); burst.isDecoded(frame) && at < burst.frameEnd(frame); at++) {
                held[burst.number()][(int) at] = true;
            }
        }

        private void tick(long nowNanos) {
            timeRanBackwards |= nowNanos < lastNanos;
            lastNanos = nowNanos;
        }
    }
}
