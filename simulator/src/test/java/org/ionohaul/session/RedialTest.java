package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqRules.AnswerToSilence;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.junit.jupiter.api.Test;

/** How long a station dials anew: its redials count from the last link that got further, or over the whole session. */
final class RedialTest {
    private static final int TRIALS = 20_000;
    private static final int REDIALS = 2;
    private static final double LOSS = 0.6;
    private static final int ONE_FRAME = 100;
    private static final long HOUR = Bench.HOUR;
    private static final PlainWaveform CALL = PlainWaveform.certain(0, 500 * Bench.MILLI, 500 * Bench.MILLI);
    private static final PlainWaveform CONTROL = PlainWaveform.certain(0, 100 * Bench.MILLI, 100 * Bench.MILLI);
    private static final PlainWaveform ACKNOWLEDGEMENT = PlainWaveform.certain(0, 50 * Bench.MILLI, 50 * Bench.MILLI);
    private static final PlainWaveform OVER = PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI);

    private final Bench bench = new Bench();

    /**
     * Every link is answered and lost with its first silence, and an over of one frame gets through with probability p, so
     * that a link gets further with probability p. It gives up where r + 1 links in a row from the start, or r after one
     * that got further, bring nothing. With q = (1 - p)^r the number of links that got further is 0 with probability
     * (1 - p) q and then geometric with mean 1 / q; a run that ends at the first success or after n failures takes (1 -
     * (1 - p)^n) / p links on average (elementary: the sum over k below n of P(more than k)).
     */
    @Test
    void withRedialsRenewedByProgressTheLinksThatGetFurtherAreGeometric() {
        double p = 1 - LOSS;
        double q = Math.pow(LOSS, REDIALS);
        double some = 1 - LOSS * q;
        double further = some / q;
        double links = some / p + further * (1 - q) / p;
        Links seen = links(true);
        seen.compare("links", seen.lost, links);
        seen.compare("no link got further", seen.isNone(), 1 - some);
        seen.compare("links that got further", seen.further, further);
        seen.compare("more than five got further", seen.isMoreThan(5), some * Math.pow(1 - q, 5));
    }

    /** Counted over the whole session there are r + 1 links, and so many of them get further as of r + 1 coins show heads. */
    @Test
    void countedOverTheSessionTheLinksAreOneMoreThanTheRedials() {
        Links seen = links(false);
        assertTrue(Arrays.stream(seen.lost).allMatch(it -> it == REDIALS + 1));
        seen.compare("links that got further", seen.further, (REDIALS + 1) * (1 - LOSS));
        seen.compare("no link got further", seen.isNone(), Math.pow(LOSS, REDIALS + 1));
    }

    private Links links(boolean isRenewed) {
        bench.window = 1;
        bench.shortOver = 1;
        bench.longOver = 1;
        bench.silencesToLost = 1;
        // Short calls: with one silence to lose a link the called station gives up before a long answer has ended.
        bench.call = PlainWaveform.certain(0, 0, 100 * Bench.MILLI);
        bench.dataRates = List.of(PlainWaveform.losing(ONE_FRAME, 200 * Bench.MILLI, 100 * Bench.MILLI, LOSS));
        bench.rules = rules(REDIALS, isRenewed, true);
        bench.cargo = Cargo.from(End.NEAR, List.of(1_000_000L));
        Further witness = new Further();
        bench.trace = witness;
        Links links = new Links();
        for (int trial = 0; trial < TRIALS; trial++) {
            witness.links = 0;
            SessionResult result = bench.run(trial);
            assertEquals(Ending.LINK_LOST, result.ending());
            links.lost[trial] = result.linksLost();
            links.further[trial] = witness.links;
        }
        return links;
    }

    /** A frame that arrived while every acknowledgement is lost is progress, too: the next acceptance tells of it. */
    @Test
    void whatOnlyTheNextAcceptanceTellsOfIsProgress() {
        bench.acknowledgement = ACKNOWLEDGEMENT.with((listener, start) -> 0);
        bench.cargo = Cargo.from(End.NEAR, List.of(4000L));
        bench.rules = rules(2, true, true);
        SessionResult renewed = bench.run(0);
        // Five links bring 8 frames each; the sixth confirms the last of the 40.
        assertEquals(5, renewed.linksLost());
        assertEquals(Outcome.CLOSED, renewed.outcome());
        bench.rules = rules(2, false, true);
        SessionResult counted = bench.run(0);
        assertEquals(3, counted.linksLost());
        assertEquals(Ending.LINK_LOST, counted.ending());
    }

    /** What the station that dialled holds of the other's files counts like what was acknowledged to it. */
    @Test
    void aFileThatComesInIsProgress() {
        bench.acknowledgement = ACKNOWLEDGEMENT.with((listener, start) -> 0);
        bench.cargo = Cargo.from(End.FAR, List.of(4000L));
        bench.rules = rules(2, true, true);
        // The other end never learns that all has arrived, so nobody hangs up.
        assertEquals(Ending.NOTHING_MORE_HEARD, bench.run(0).ending());
        bench.rules = rules(2, false, true);
        assertEquals(Ending.LINK_LOST, bench.run(0).ending());
    }

    /** A mode that begins files anew gets no further by sending the same bytes again. */
    @Test
    void theSameBytesOnceMoreAreNoProgress() {
        // Each link, from its first over on, is up for just one over.
        Further witness = new Further();
        bench.trace = witness;
        bench.dataRates = List.of(OVER.with((listener, start) -> witness.oversOfLink <= 1 ? 1 : 0));
        bench.rules = rules(3, true, false);
        bench.cargo = Cargo.from(End.NEAR, List.of(4000L));
        SessionResult result = bench.run(0);
        assertEquals(1 + 3, result.linksLost());
        assertEquals(Ending.LINK_LOST, result.ending());
    }

    /**
     * Nothing at all gets through for an hour after some bytes did: dialling ends as soon as without those bytes, at the
     * time added by hand, so that the hour is not dialled through; who wants that gives enough redials.
     */
    @Test
    void inADeadHourTheRedialsLastAsLongAsEver() {
        long breaks = 20 * Bench.SECOND;
        bench.cargo = Cargo.from(End.NEAR, List.of(40_000L));
        die(breaks);
        bench.rules = rules(2, true, true);
        SessionResult result = bench.run(0);
        assertEquals(Ending.LINK_LOST, result.ending());
        // Five overs of 1 s meet silence for 0.11 s each (10 ms to turn round and an acknowledgement of 0.1 s), and
        // begin 10
        // ms after the last wait or acknowledgement; then two times a pause of 10 s and three calls of 1 s, each after
        // 10 ms
        // and followed by 1.01 s of waiting, with a second between. The first of the overs is the one that the break
        // meets.
        long silences = 5 * (10 + 1000 + 110);
        long dialling = 10_000 + 3 * (10 + 1000 + 1010) + 2 * 1000;
        double lateSeconds = (result.endedNanos() - breaks) / 1e9;
        assertEquals((silences + 2 * dialling) / 1e3, lateSeconds, 1.12);
        bench.rules = rules(2, false, true);
        assertEquals(result.endedNanos(), bench.run(0).endedNanos());

        bench.rules = rules(1000, true, true);
        SessionResult patient = bench.run(0);
        assertEquals(Outcome.CLOSED, patient.outcome());
        assertTrue(patient.deliveredNanos().orElseThrow() > breaks + HOUR);

        bench.patience = 30 * 60 * Bench.SECOND;
        assertEquals(Ending.OUT_OF_PATIENCE, bench.run(0).ending());
    }

    /** Overs get lost for an hour, polls and their answers do not: the link stands, and no redial is needed. */
    @Test
    void pollsThatAreAnsweredThroughADeadHourKeepTheLink() {
        long breaks = 20 * Bench.SECOND;
        bench.answerToSilence = AnswerToSilence.POLL;
        bench.cargo = Cargo.from(End.NEAR, List.of(40_000L));
        bench.dataRates = List.of(OVER.with((listener, start) -> isDead(start, breaks) ? 0 : 1));
        bench.rules = rules(0, true, true);
        SessionResult result = bench.run(0);
        assertEquals(0, result.linksLost());
        assertEquals(Outcome.CLOSED, result.outcome());
        assertTrue(result.deliveredNanos().orElseThrow() > breaks + HOUR);
        bench.patience = 30 * 60 * Bench.SECOND;
        assertEquals(Ending.OUT_OF_PATIENCE, bench.run(0).ending());
    }

    private void die(long breaks) {
        PlainWaveform.Chance chance = (listener, start) -> isDead(start, breaks) ? 0 : 1;
        bench.dataRates = List.of(OVER.with(chance));
        bench.acknowledgement = ACKNOWLEDGEMENT.with(chance);
        bench.call = CALL.with(chance);
        bench.control = CONTROL.with(chance);
    }

    private static boolean isDead(long startNanos, long breaksNanos) {
        return startNanos >= breaksNanos && startNanos < breaksNanos + HOUR;
    }

    private static SessionRules rules(int redials, boolean isRenewed, boolean resumes) {
        return new SessionRules(3, Bench.SECOND, 1, 3, resumes, redials, isRenewed, 10 * Bench.SECOND);
    }

    /** Counts links that brought bytes, and the overs of the link that stands. */
    private static final class Further implements SessionTrace {
        private int links;
        private int oversOfLink;
        private boolean isFurther;

        @Override
        public void onLinked(long nowNanos) {
            oversOfLink = 0;
            isFurther = false;
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            oversOfLink += burst.message() == Message.OVER ? 1 : 0;
        }

        @Override
        public void onProgress(long heldBytes, long nowNanos) {
            links += isFurther ? 0 : 1;
            isFurther = true;
        }
    }

    /** How many links each trial had, and how many of them got further. */
    private static final class Links {
        private final double[] lost = new double[TRIALS];
        private final double[] further = new double[TRIALS];

        double[] isNone() {
            return Arrays.stream(further).map(it -> it == 0 ? 1 : 0).toArray();
        }

        double[] isMoreThan(int links) {
            return Arrays.stream(further).map(it -> it > links ? 1 : 0).toArray();
        }

        void compare(String what, double[] sample, double expected) {
            double mean = Arrays.stream(sample).average().orElseThrow();
            double squares =
                    Arrays.stream(sample).map(it -> (it - mean) * (it - mean)).sum();
            assertEquals(expected, mean, 4 * Math.sqrt(squares) / sample.length, what);
        }
    }
}
