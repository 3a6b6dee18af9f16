package org.ionohaul.link;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.channel.DerivedReception;
import org.ionohaul.channel.End;
import org.ionohaul.channel.Reception;
import org.ionohaul.engine.Engine;
import org.ionohaul.rate.FixedPolicy;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.waveform.SteadyReception;
import org.junit.jupiter.api.Test;

/** A file of 160 bytes in frames of 10: what goes out, what is acknowledged, what the policy is told. An over lasts 800 ms. */
final class OverTest {
    private static final long MILLI = 1_000_000L;
    private static final StationTimes AT_ONCE = new StationTimes(0, 0, 0, 0);

    private final List<String> overs = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final Reception good = new SteadyReception(20);
    private Reception atFar = good;
    private Reception atNear = good;

    /** Sends the file under a scheme and returns what became of it. */
    private String send(ArqScheme scheme) {
        Engine engine = new Engine();
        Ether ether = new PairEther(atNear, atFar, ChannelWatch.ALWAYS_CLEAR, 0);
        LinkParts parts = PlainLink.parts(AT_ONCE, PlainLink.rules(scheme, false));
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
                receiver.onOver(burst);
            }

            @Override
            public void onSilence() {}
        });
        receiver.begin(1, 0);
        sender.begin(1, 160, 0);
        engine.run();
        assertEquals(1, fate.size());
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

    /** Good but for a while. */
    private record Fading(long fromNanos, long untilNanos) implements DerivedReception {
        @Override
        public Reception original() {
            return new SteadyReception(20);
        }

        @Override
        public void powers(long atNanos, double[] signal, double[] disturbance) {
            original().powers(atNanos, signal, disturbance);
            signal[0] = atNanos >= fromNanos && atNanos < untilNanos ? 1e-9 : signal[0];
        }

        @Override
        public long steadyNanos() {
            return 1;
        }
    }

    /** Notes the bytes of each over, joined where frames touch. */
    private final class Observer implements LinkTrace {
        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
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

    /** Always the first data rate; notes what it is told. */
    private final class Eavesdropper implements RatePolicy {
        private final RatePolicy fixed = new FixedPolicy(1);

        @Override
        public int chooseDataRate(long nowNanos) {
            return fixed.chooseDataRate(nowNanos);
        }

        @Override
        public void onAcknowledged(long nowNanos, int dataRate, int framesSent, int framesLost, double snrDb) {
            told.add(framesSent + " sent, " + framesLost + " lost");
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
