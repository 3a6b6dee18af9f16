package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.rate.FixedPolicy;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.SteadyReception;
import org.junit.jupiter.api.Test;

/** A file of 160 bytes in frames of 10: what goes out, what is acknowledged, what the policy is told. An over lasts 800 ms. */
final class OverTest {
    private static final long MILLI = 1_000_000L;
    private static final StationTimes AT_ONCE = new StationTimes(0, 0, 0, 0);

    private final List<String> overs = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final List<String> changes = new ArrayList<>();
    private final List<Double> snrsDb = new ArrayList<>();
    private final Reception good = new SteadyReception(20);
    private Reception atFar = good;
    private Reception atNear = good;

    private int chosenDataRate = 1;
    private boolean tellsSnr;

    private String send(ArqScheme scheme) {
        return send(PlainLink.rules(scheme, false), 160, 0);
    }

    /** Sends a file, of which some is held already, and returns what became of it. */
    private String send(ArqRules rules, long bytes, long fromByte) {
        Engine engine = new Engine();
        Ether ether = new PairEther(atNear, atFar, ChannelWatch.ALWAYS_CLEAR, 0);
        LinkParts parts = PlainLink.parts(AT_ONCE, rules);
        Link link = new Link(parts, new Medium(engine, ether, 2), PairEther.NEAR, PairEther.FAR, new Observer());
        Station near = link.station(End.NEAR);
        Station far = link.station(End.FAR);
        List<String> fate = new ArrayList<>();
        OverSender sender = new OverSender(link, near, new Eavesdropper(), new OverSender.Fate() {
            @Override
            public void onAllAcknowledged() {
                fate.add("acknowledged");
            }

            @Override
            public void onLost() {
                fate.add("lost");
            }
        });
        OverReceiver receiver = new OverReceiver(link, far);
        near.operate(new Protocol() {
            @Override
            public void onBurst(Burst burst) {
                sender.onAcknowledgement(burst);
            }

            @Override
            public void onSilence() {
                sender.onSilence();
            }
        });
        far.operate(new Protocol() {
            @Override
            public void onBurst(Burst burst) {
                if (burst.message() == Message.OVER) {
                    receiver.onOver(burst);
                } else {
                    receiver.onPoll();
                }
            }

            @Override
            public void onSilence() {}
        });
        receiver.begin(1, bytes, fromByte);
        sender.begin(1, bytes, fromByte);
        engine.run();
        assertEquals(1, fate.size());
        assertEquals(1, receiver.file());
        boolean isDone = fate.get(0).equals("acknowledged");
        assertEquals(isDone ? bytes : fromByte, sender.acknowledgedBytes(1));
        assertTrue(receiver.heldInOrderBytes() >= sender.acknowledgedBytes(1));
        assertEquals(0, sender.acknowledgedBytes(2));
        return fate.get(0);
    }

    /** Loses the third frame of the first over, which is on the air from 200 to 300 ms. */
    private static Reception withoutTheThirdFrame() {
        return new Fading(200 * MILLI, 300 * MILLI);
    }

    @Test
    void selectiveRepeatSendsTheMissingFrameAndGoesOnAsFarAsTheWindowAllows() {
        atFar = withoutTheThirdFrame();
        assertEquals("acknowledged", send(ArqScheme.SELECTIVE_REPEAT));
        assertEquals(List.of("0-80 (8 new)", "20-30 80-150 (7 new)", "150-160 (1 new)"), overs);
        assertEquals(List.of("8 sent, 1 lost", "8 sent, 0 lost", "1 sent, 0 lost"), told);
    }

    @Test
    void goBackNSendsEverythingFromTheFirstMissingFrameAndKnowsNothingOfTheRest() {
        atFar = withoutTheThirdFrame();
        assertEquals("acknowledged", send(ArqScheme.GO_BACK_N));
        assertEquals(List.of("0-80 (8 new)", "20-100 (2 new)", "100-160 (6 new)"), overs);
        assertEquals(List.of("3 sent, 1 lost", "8 sent, 0 lost", "6 sent, 0 lost"), told);
    }

    @Test
    void stopAndWaitSendsOneFrameAnOver() {
        assertEquals("acknowledged", send(ArqScheme.STOP_AND_WAIT));
        assertEquals(16, overs.size());
        assertEquals("150-160 (1 new)", overs.get(15));
    }

    @Test
    void fiveOversInARowWithoutAnAnswerLoseTheLink() {
        atFar = new SteadyReception(-50);
        assertEquals("lost", send(ArqScheme.SELECTIVE_REPEAT));
        assertEquals(List.of("0-80 (8 new)", "0-80 (0 new)", "0-80 (0 new)", "0-80 (0 new)", "0-80 (0 new)"), overs);
        assertEquals(List.of("silence", "silence", "silence", "silence", "silence"), told);
    }

    /** The first acknowledgement, from 800 to 900 ms, is lost; what was held already is not sent a third time. */
    @Test
    void aLostAcknowledgementRepeatsTheWholeOver() {
        atNear = new Fading(800 * MILLI, 900 * MILLI);
        assertEquals("acknowledged", send(ArqScheme.SELECTIVE_REPEAT));
        assertEquals(List.of("0-80 (8 new)", "0-80 (0 new)", "80-160 (8 new)"), overs);
        assertEquals(List.of("silence", "8 sent, 0 lost", "8 sent, 0 lost"), told);
    }

    /** What came out of order after the third frame of the first over is gone when the third of the second is lost. */
    @Test
    void goBackNDropsWhatComesOutOfOrder() {
        atFar = new Fading(200 * MILLI, 300 * MILLI, 1100 * MILLI, 1200 * MILLI);
        assertEquals("acknowledged", send(ArqScheme.GO_BACK_N));
        assertEquals(List.of("0-80 (8 new)", "20-100 (2 new)", "40-120 (2 new)", "120-160 (4 new)"), overs);
        assertEquals(List.of("3 sent, 1 lost", "3 sent, 1 lost", "8 sent, 0 lost", "4 sent, 0 lost"), told);
    }

    /** The first acknowledgement and the answer to the first poll are lost; that to the second tells all that is held. */
    @Test
    void aLostAcknowledgementIsAskedForByAPoll() {
        atNear = new Fading(800 * MILLI, 900 * MILLI, 1000 * MILLI, 1100 * MILLI);
        assertEquals("acknowledged", send(polling(), 160, 0));
        assertEquals(List.of("0-80 (8 new)", "poll", "poll", "80-160 (8 new)"), overs);
        assertEquals(List.of("silence", "8 sent, 0 lost", "8 sent, 0 lost"), told);
    }

    @Test
    void fiveSilencesInARowLoseTheLinkPollsIncluded() {
        atNear = new SteadyReception(-50);
        assertEquals("lost", send(polling(), 160, 0));
        assertEquals(List.of("0-80 (8 new)", "poll", "poll", "poll", "poll"), overs);
        assertEquals(List.of("silence"), told);
    }

    /** Over, silence, poll, answer; were silences not forgotten, the second over's first would be the fifth. */
    @Test
    void anAnswerEndsTheRowOfSilences() {
        atNear = new Fading(800 * MILLI, 1200 * MILLI, 2100 * MILLI, 2700 * MILLI);
        assertEquals("acknowledged", send(polling(), 160, 0));
        assertEquals(List.of("silence", "8 sent, 0 lost", "silence", "8 sent, 0 lost"), told);
    }

    private static ArqRules polling() {
        return rules(8, 8, ArqRules.AnswerToSilence.POLL);
    }

    private static ArqRules rules(int shortFrames, int longFrames, ArqRules.AnswerToSilence answerToSilence) {
        return new ArqRules(
                ArqScheme.SELECTIVE_REPEAT,
                8,
                shortFrames,
                longFrames,
                100_000 * MILLI,
                Combining.NONE,
                0,
                answerToSilence,
                5,
                false,
                0,
                0);
    }

    @Test
    void oversGrowWhileMoreThanAShortOneIsWaitingAndTheLastCameThroughWhole() {
        ArqRules growing = rules(4, 8, ArqRules.AnswerToSilence.REPEAT);
        assertEquals("acknowledged", send(growing, 160, 0));
        // After 120 bytes just a short over is left, and so it is one.
        assertEquals(List.of("0-40 (4 new)", "40-120 (8 new)", "120-160 (4 new)"), overs);
        overs.clear();
        assertEquals("acknowledged", send(growing, 170, 0));
        assertEquals(List.of("0-40 (4 new)", "40-120 (8 new)", "120-170 (5 new)"), overs);
    }

    @Test
    void oversAreShortAgainAfterALossOrSilence() {
        ArqRules growing = rules(2, 4, ArqRules.AnswerToSilence.REPEAT);
        // The first frame of the second over, which begins at 300 ms, is lost.
        atFar = new Fading(300 * MILLI, 400 * MILLI);
        assertEquals("acknowledged", send(growing, 160, 0));
        assertEquals(
                List.of(
                        "0-20 (2 new)",
                        "20-60 (4 new)",
                        "20-30 60-70 (1 new)",
                        "70-110 (4 new)",
                        "110-150 (4 new)",
                        "150-160 (1 new)"),
                overs);
        overs.clear();
        atFar = good;
        // The acknowledgement of the second over, from 700 to 800 ms, is lost.
        atNear = new Fading(700 * MILLI, 800 * MILLI);
        assertEquals("acknowledged", send(growing, 80, 0));
        assertEquals(List.of("0-20 (2 new)", "20-60 (4 new)", "20-40 (0 new)", "60-80 (2 new)"), overs);
    }

    @Test
    void aFileIsTakenUpWhereItWasLeft() {
        assertEquals("acknowledged", send(PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false), 160, 35));
        assertEquals(List.of("35-115 (8 new)", "115-160 (5 new)"), overs);
    }

    @Test
    void framesAreCutForTheDataRateThatIsChosen() {
        chosenDataRate = 3;
        assertEquals("acknowledged", send(ArqScheme.SELECTIVE_REPEAT));
        assertEquals(List.of("0-160 (4 new)"), overs);
        assertEquals(List.of("NEAR from 1 to 3"), changes);
    }

    @Test
    void whoWatchesMayAskForTheSnrThatNoPolicyUses() {
        send(ArqScheme.SELECTIVE_REPEAT);
        assertTrue(snrsDb.stream().allMatch(it -> Double.isNaN(it)), snrsDb::toString);
        snrsDb.clear();
        tellsSnr = true;
        send(ArqScheme.SELECTIVE_REPEAT);
        // Measured with an error of 1 dB: beyond 5 dB once in a million.
        assertEquals(2, snrsDb.size());
        for (double snrDb : snrsDb) {
            assertEquals(20, snrDb, 5);
        }
    }

    /** After a broken link the sender is told from where on: what was on the air before is new to nobody. */
    @Test
    void aFileBegunAgainCountsWhatWasOnTheAirAsRepeated() {
        Engine engine = new Engine();
        Ether ether = new PairEther(good, good, ChannelWatch.ALWAYS_CLEAR, 0);
        LinkParts parts = PlainLink.parts(AT_ONCE, PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false));
        Link link = new Link(parts, new Medium(engine, ether, 2), PairEther.NEAR, PairEther.FAR, new Observer());
        OverSender sender = new OverSender(link, link.station(End.NEAR), new Eavesdropper(), new OverSender.Fate() {
            @Override
            public void onAllAcknowledged() {}

            @Override
            public void onLost() {}
        });
        for (int file : List.of(3, 3, 4)) {
            sender.begin(file, 160, 40);
            link.station(End.NEAR).stopWaiting();
            engine.run();
            assertEquals(40, sender.acknowledgedBytes(file));
        }
        assertEquals(List.of("40-120 (8 new)", "40-120 (0 new)", "40-120 (8 new)"), overs);
    }

    /** Frames of 10 bytes from 20 and 40 on are wrong; what is held already is not made worse. */
    @Test
    void bytesBehindAWrongFrameAreHeldAndNotRight() {
        List<String> wrong = new ArrayList<>();
        Ether ether = new PairEther(good, good, ChannelWatch.ALWAYS_CLEAR, 0);
        LinkParts parts = PlainLink.parts(AT_ONCE, PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false));
        Link link = new Link(parts, new Medium(new Engine(), ether, 2), PairEther.NEAR, PairEther.FAR, new LinkTrace() {
            @Override
            public void onWrongFrame(End at, long fromByte, long atNanos) {
                wrong.add(at + " from " + fromByte);
            }
        });
        OverReceiver receiver = new OverReceiver(link, link.station(End.FAR));
        receiver.begin(1, 100, 25);
        assertEquals(25, receiver.rightInOrderBytes());
        hear(link, receiver, 40, 20, 30);
        assertEquals(List.of("FAR from 40", "FAR from 25"), wrong);
        assertEquals(50, receiver.heldInOrderBytes());
        assertEquals(25, receiver.rightInOrderBytes());
        hear(link, receiver, 20);
        assertEquals(2, wrong.size());
        // Taken up again, what was wrong stays so; of another file nothing is.
        receiver.begin(1, 100, 50);
        assertEquals(25, receiver.rightInOrderBytes());
        receiver.begin(2, 100, 50);
        assertEquals(50, receiver.rightInOrderBytes());
        receiver.begin(2, 100, 0);
        assertEquals(0, receiver.rightInOrderBytes());
    }

    /** An over of frames that begin there, wrong but for that which begins at 30. */
    private static void hear(Link link, OverReceiver receiver, int... starts) {
        Burst over = new Burst();
        over.openOver(1, 1);
        for (int start : starts) {
            over.addFrame(start, start + 10, 0);
        }
        over.leave(0, false, PairEther.NEAR, PairEther.FAR);
        for (int frame = 0; frame < starts.length; frame++) {
            over.decode(frame, starts[frame] != 30);
        }
        receiver.onOver(over);
        link.engine().run();
    }

    @Test
    void anAcknowledgementOfAnotherFileIsNone() {
        Engine engine = new Engine();
        Ether ether = new PairEther(good, good, ChannelWatch.ALWAYS_CLEAR, 0);
        LinkParts parts = PlainLink.parts(AT_ONCE, PlainLink.rules(ArqScheme.SELECTIVE_REPEAT, false));
        Link link = new Link(parts, new Medium(engine, ether, 2), PairEther.NEAR, PairEther.FAR, new Observer());
        OverSender sender = new OverSender(link, link.station(End.NEAR), new Eavesdropper(), new OverSender.Fate() {
            @Override
            public void onAllAcknowledged() {
                throw new AssertionError("nothing was");
            }

            @Override
            public void onLost() {}
        });
        sender.begin(3, 160, 0);
        ByteRanges held = new ByteRanges();
        held.setPrefix(160);
        Burst other = new Burst();
        other.acknowledge(4, held, ArqScheme.SELECTIVE_REPEAT, Double.NaN);
        sender.onAcknowledgement(other);
        assertEquals(0, sender.acknowledgedBytes(3));
        assertEquals(List.of(), told);
    }

    /** Good but for a while, or two. */
    private record Fading(long fromNanos, long untilNanos, long againFromNanos, long againUntilNanos)
            implements DerivedReception {
        Fading(long fromNanos, long untilNanos) {
            this(fromNanos, untilNanos, 0, 0);
        }

        private boolean isGone(long atNanos) {
            return (atNanos >= fromNanos && atNanos < untilNanos)
                    || (atNanos >= againFromNanos && atNanos < againUntilNanos);
        }

        @Override
        public Reception original() {
            return new SteadyReception(20);
        }

        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            original().powers(atNanos, signal, disturbance);
            signal[0] = isGone(atNanos) ? 1e-9 : signal[0];
        }

        @Override
        public long steadyNanos() {
            return 1;
        }
    }

    /** Notes the bytes of each over, joined where frames touch. */
    private final class Observer implements LinkTrace {
        @Override
        public boolean wantsSnr() {
            return tellsSnr;
        }

        @Override
        public void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {
            if (chosen != before) {
                changes.add(at + " from " + before + " to " + chosen);
            }
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            if (burst.message() == Message.POLL) {
                overs.add("poll");
            }
            if (burst.message() == Message.OVER) {
                StringBuilder ranges = new StringBuilder();
                long start = burst.frameStart(0);
                for (int frame = 0; frame < burst.frames(); frame++) {
                    boolean isLast = frame == burst.frames() - 1;
                    if (isLast || burst.frameStart(frame + 1) != burst.frameEnd(frame)) {
                        ranges.append(start)
                                .append('-')
                                .append(burst.frameEnd(frame))
                                .append(' ');
                        start = isLast ? start : burst.frameStart(frame + 1);
                    }
                }
                overs.add(ranges + "(" + burst.newFrames() + " new)");
            }
        }
    }

    /** Always the same data rate; notes what it is told. */
    private final class Eavesdropper implements RatePolicy {
        private final RatePolicy fixed = new FixedPolicy(chosenDataRate);

        @Override
        public int chooseDataRate(long nowNanos) {
            return fixed.chooseDataRate(nowNanos);
        }

        @Override
        public void onAcknowledged(long nowNanos, int dataRate, int framesSent, int framesLost, double snrDb) {
            told.add(framesSent + " sent, " + framesLost + " lost");
            snrsDb.add(snrDb);
        }

        @Override
        public void onSilence(long nowNanos, int dataRate, int framesSent) {
            told.add("silence");
        }

        @Override
        public String reason() {
            return fixed.reason();
        }
    }
}
