package org.ionohaul.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.ionohaul.channel.End;
import org.ionohaul.link.ArqRules.AnswerToSilence;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.link.StationTimes;
import org.ionohaul.rate.RatePolicy;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.Combining;
import org.junit.jupiter.api.Test;

/** How the link works, rule by rule, seen on the air. */
final class MechanismTest {
    private static final PlainWaveform ACKNOWLEDGEMENT = PlainWaveform.certain(0, 50 * Bench.MILLI, 50 * Bench.MILLI);

    private final Bench bench = new Bench();
    private final Listening heard = new Listening();

    private SessionResult run() {
        bench.trace = heard;
        return bench.run(0);
    }

    @Test
    void whileTheQueueIsLongAndNothingGetsLostOversGrow() {
        bench.window = 20;
        bench.shortOver = 3;
        bench.longOver = 7;
        bench.cargo = Cargo.from(End.NEAR, List.of(100L * 20));
        run();
        // Three to begin with, then seven while more than a short over is waiting: 20 = 3 + 7 + 7 + 3.
        assertEquals(List.of(3, 7, 7, 3), heard.overs);
    }

    @Test
    void anOverNeverLastsLongerThanAllowedUnlessOneFrameDoes() {
        bench.longestOver = 450 * Bench.MILLI;
        run();
        assertEquals(List.of(2, 2, 2, 2, 2), heard.overs);
        heard.overs.clear();
        bench.longestOver = 1;
        run();
        assertEquals(10, heard.overs.size());
    }

    @Test
    void theWindowBoundsWhatIsUnacknowledged() {
        // The first frame of the first over is lost; of the next over it takes one of the window's three places.
        bench.window = 3;
        bench.dataRates = List.of(
                PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI).with(new LosesFirst()));
        bench.cargo = Cargo.from(End.NEAR, List.of(500L));
        run();
        assertEquals(List.of(3, 3), heard.overs);
        assertEquals(List.of(3, 2), heard.newFrames);
    }

    @Test
    void goBackNSendsEverythingFromTheFirstLossOnAgain() {
        bench.scheme = ArqScheme.GO_BACK_N;
        bench.window = 3;
        bench.dataRates = List.of(
                PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI).with(new LosesFirst()));
        bench.cargo = Cargo.from(End.NEAR, List.of(500L));
        run();
        assertEquals(List.of(3, 3, 2), heard.overs);
        assertEquals(List.of(3, 0, 2), heard.newFrames);
    }

    @Test
    void whenAnAcknowledgementIsLostAPollBringsItAgainAndNoFrameIsRepeated() {
        bench.acknowledgement = ACKNOWLEDGEMENT.with(new LosesFirst());
        bench.answerToSilence = AnswerToSilence.POLL;
        SessionResult result = run();
        assertEquals(1, heard.count(Message.POLL));
        assertEquals(0, result.budget().nanosOf(Cause.REPEATED_PAYLOAD));
        assertEquals(1, result.acknowledgementsLost());
    }

    @Test
    void withoutPollsTheOverIsRepeatedAndItsFramesAreRecognisedAsDuplicates() {
        bench.acknowledgement = ACKNOWLEDGEMENT.with(new LosesFirst());
        SessionResult result = run();
        assertEquals(List.of(8, 8, 2), heard.overs);
        assertEquals(800 * Bench.MILLI, result.budget().nanosOf(Cause.REPEATED_PAYLOAD));
        // Four bursts answer at once, 10 ms each; the repetition comes the nanosecond after an acknowledgement was due.
        assertEquals(40 * Bench.MILLI, result.budget().nanosOf(Cause.TURNAROUNDS));
        assertEquals(1, result.budget().nanosOf(Cause.SILENCE));
        assertEquals(1000, result.progress().heldBytes(result.progress().size() - 1));
    }

    @Test
    void aStationThatStillSwitchesCanNotHearSoTheOtherLeavesItTheTime() {
        bench.near = new StationTimes(30 * Bench.MILLI, 20 * Bench.MILLI, 40 * Bench.MILLI, 0);
        bench.far = new StationTimes(0, 5 * Bench.MILLI, 0, 10 * Bench.MILLI);
        SessionResult result = run();
        // After near's bursts 30 + 20 + 40 ms of near's switching, after far's just near's own relay of 20 ms. In two
        // cycles that is twice the one and, between the overs, once the other.
        assertEquals((2 * 90 + 20) * Bench.MILLI, result.budget().nanosOf(Cause.TURNAROUNDS));
        assertEquals(Outcome.CLOSED, result.outcome());
    }

    @Test
    void aStationListensBeforeItBeginsAnOverAndWaitsInSilence() {
        SessionResult undisturbed = run();
        long busyFrom = undisturbed.progress().atNanos(0);
        bench.listensFirst = true;
        bench.watch = (end, fromNanos, atNanos) ->
                end == End.NEAR && atNanos > busyFrom && atNanos < busyFrom + 20 * Bench.SECOND;
        SessionResult result = run();
        long silence = result.budget().nanosOf(Cause.SILENCE);
        assertTrue(silence > 19 * Bench.SECOND && silence < 24 * Bench.SECOND, "waited " + silence + " ns");
        assertEquals(
                undisturbed.budget().nanosOf(Cause.NEW_PAYLOAD), result.budget().nanosOf(Cause.NEW_PAYLOAD));
    }

    @Test
    void aChangeOfDataRateCutsWhatIsMissingAnewAndEachByteIsDeliveredOnce() {
        // Data rate 2 carries 250 bytes a frame and loses its first over wholly; data rate 1 carries 100.
        PlainWaveform fast = PlainWaveform.certain(250, 200 * Bench.MILLI, 100 * Bench.MILLI);
        bench.dataRates = List.of(
                PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI),
                fast.with((listener, start) -> start < 4 * Bench.SECOND ? 0 : 1));
        bench.ratePolicy = new RatePolicyRules.Count(2, 1, 1, 0.5, false);
        bench.cargo = Cargo.from(End.NEAR, List.of(1720L));
        SessionResult result = run();
        assertEquals(7, heard.overs.get(0));
        assertEquals(8, heard.overs.get(1));
        assertEquals(
                List.of("down 2 -> 1: 7 of 7 frames lost", "up 1 -> 2: no frame lost for long enough"),
                heard.decisions);
        assertEquals(1720, result.progress().heldBytes(result.progress().size() - 1));
        assertEquals(Outcome.CLOSED, result.outcome());
    }

    /** Data rate 2 sends 2000 bytes that nobody hears; data rate 1 sends them again in frames of 120 bytes. */
    @Test
    void ofAFrameCutAcrossTheEndOfWhatWasSentOnlyThatPartIsARepeat() {
        bench.dataRates = List.of(
                PlainWaveform.certain(120, 200 * Bench.MILLI, 100 * Bench.MILLI),
                PlainWaveform.certain(250, 200 * Bench.MILLI, 100 * Bench.MILLI).with((listener, start) -> 0));
        bench.ratePolicy = new RatePolicyRules.Count(2, 1000, 1, 0.5, false);
        bench.cargo = Cargo.from(End.NEAR, List.of(2880L));
        SessionResult result = run();
        assertEquals(List.of(8, 8, 8, 8), heard.overs);
        // Frames 120 bytes long: sixteen of the first 1920 bytes, two thirds of the one from byte 1920 to 2040.
        assertEquals(1666, result.budget().nanosOf(Cause.REPEATED_PAYLOAD) / Bench.MILLI);
        assertEquals(1533, result.budget().nanosOf(Cause.NEW_PAYLOAD) / Bench.MILLI);
    }

    /**
     * The first acknowledgement is lost, and far is still switching when near might repeat at once: near's relays take 5 ms,
     * far's hang, relays and recovery 60 ms.
     */
    @Test
    void anOverAfterALostAcknowledgementWaitsUntilTheOtherEndCanHear() {
        bench.near = new StationTimes(0, 5 * Bench.MILLI, 0, 10 * Bench.MILLI);
        bench.far = new StationTimes(20 * Bench.MILLI, 10 * Bench.MILLI, 30 * Bench.MILLI, 0);
        bench.propagation = 3 * Bench.MILLI;
        for (long marginMillis : List.of(0, 20, 500)) {
            heard.overs.clear();
            bench.acknowledgement = ACKNOWLEDGEMENT.with(new LosesFirst());
            bench.margin = marginMillis * Bench.MILLI;
            SessionResult result = run();
            assertEquals(List.of(8, 8, 2), heard.overs);
            assertEquals(0, heard.deafOvers);
            // From the missed acknowledgement's end: the 60 ms that far needs, or the margin and near's own relays.
            long silenceMillis = Math.max(60, marginMillis + 5);
            assertEquals(silenceMillis, result.budget().nanosOf(Cause.SILENCE) / Bench.MILLI);
        }
    }

    /** An over of 1 s, 3 ms each way, 50 ms of acknowledgement, turnarounds of 60 and 10 ms: 1126 ms go into 1.2 s. */
    @Test
    void stationsThatKeepARhythmSendAtItsBeatWhateverTheyHear() {
        bench.acknowledgement = PlainWaveform.losing(0, 0, 50 * Bench.MILLI, 0).with(new LosesFirst());
        bench.near = new StationTimes(0, 5 * Bench.MILLI, 0, 10 * Bench.MILLI);
        bench.far = new StationTimes(20 * Bench.MILLI, 10 * Bench.MILLI, 30 * Bench.MILLI, 0);
        bench.propagation = 3 * Bench.MILLI;
        bench.cycle = 1200 * Bench.MILLI;
        bench.cargo = Cargo.from(End.NEAR, List.of(2400L));
        SessionResult result = run();
        assertEquals(List.of(8, 8, 8, 8), heard.overs);
        assertEquals(List.of(1200L, 1200L, 1200L), heard.millisBetweenOvers());
        assertEquals(0, heard.deafOvers);
        assertEquals(Outcome.CLOSED, result.outcome());
    }

    @Test
    void anAcknowledgementThatComesAfterTheBeatIsMissedEveryTime() {
        bench.propagation = 150 * Bench.MILLI;
        bench.cycle = 1200 * Bench.MILLI;
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 0, true, 0);
        SessionResult result = run();
        assertEquals(5, heard.overs.size());
        assertEquals(List.of(1200L, 1200L, 1200L, 1200L), heard.millisBetweenOvers());
        assertEquals(Ending.LINK_LOST, result.ending());
    }

    @Test
    void aBeatThatLeavesNoTimeForAnAnswerLosesTheLinkAndNothingElse() {
        bench.near = new StationTimes(0, 400 * Bench.MILLI, 0, 10 * Bench.MILLI);
        bench.propagation = 150 * Bench.MILLI;
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 0, true, 0);
        for (long cycleMillis : List.of(17L, 1200L)) {
            heard.overNanos.clear();
            bench.cycle = cycleMillis * Bench.MILLI;
            SessionResult result = run();
            // Relays of 400 ms after an over of 1 s that has arrived 150 ms later.
            assertEquals(List.of(1550L, 1550L, 1550L, 1550L), heard.millisBetweenOvers());
            assertEquals(Ending.LINK_LOST, result.ending());
        }
    }

    @Test
    void combinedCopiesSucceedWithTheChanceOfTheirEvidenceTogether() {
        // A copy is worth 0.4, two together 0.8, three 1: decoded by the first copy in 40 %, by the second in 80 %, by
        // the
        // third always. The mean number of copies is 1 + 0.6 + 0.2.
        bench.combining = Combining.CHASE;
        bench.store = 8;
        bench.silencesToLost = 1000;
        bench.dataRates = List.of(PlainWaveform.losing(1, 0, Bench.MILLI, 0.6));
        bench.cargo = Cargo.from(End.NEAR, List.of(20_000L));
        double copies = bench.run(0).dataRates().get(0).framesSent() / 20_000.0;
        double variance = 0.4 + 0.4 * 4 + 0.2 * 9 - 1.8 * 1.8;
        assertEquals(1.8, copies, 4 * Math.sqrt(variance / 20_000));
    }

    @Test
    void withoutRoomInTheStoreCopiesStandAlone() {
        bench.combining = Combining.CHASE;
        bench.store = 0;
        bench.silencesToLost = 1000;
        bench.dataRates = List.of(PlainWaveform.losing(1, 0, Bench.MILLI, 0.6));
        bench.cargo = Cargo.from(End.NEAR, List.of(20_000L));
        double copies = bench.run(0).dataRates().get(0).framesSent() / 20_000.0;
        assertEquals(1 / 0.4, copies, 4 * Math.sqrt(0.6 / 0.16 / 20_000));
    }

    @Test
    void theCalledStationAnswersANewCallEvenWhileItThinksTheOldLinkStands() {
        // The link breaks at once after the first acknowledgement; near redials long before far gives the old link up.
        bench.silencesToLost = 1;
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 2, true, 0);
        bench.cargo = Cargo.from(End.FAR, List.of(5000L));
        bench.dataRates = List.of(PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI)
                .with((listener, start) -> start > 6 * Bench.SECOND && start < 9 * Bench.SECOND ? 0 : 1));
        SessionResult result = run();
        assertEquals(Outcome.CLOSED, result.outcome());
        assertEquals(1, result.linksLost());
    }

    /** Half of what a frame needs comes over each link: with the half of the link before it, the second is enough. */
    @Test
    void restartingForgetsWhatWasHeardOfUndecodedFramesAndResumingKeepsIt() {
        assertEquals(2, mostOversAtHalfEvidence(true));
        assertTrue(mostOversAtHalfEvidence(false) > 2);
    }

    private long mostOversAtHalfEvidence(boolean resumes) {
        bench.combining = Combining.CHASE;
        bench.store = 8;
        bench.silencesToLost = 1;
        bench.dataRates = List.of(PlainWaveform.losing(100, 200 * Bench.MILLI, 100 * Bench.MILLI, 0.5));
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, resumes, 1000, true, Bench.SECOND);
        bench.cargo = Cargo.from(End.NEAR, List.of(100L));
        return LongStream.range(0, 50)
                .map(trial -> bench.run(trial).oversSent())
                .max()
                .orElseThrow();
    }

    @Test
    void restartingBeginsTheUnfinishedFileAnewButKeepsTheFinishedOne() {
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, false, 5, true, Bench.SECOND);
        bench.silencesToLost = 2;
        bench.cargo = Cargo.from(End.NEAR, List.of(400L, 2400L));
        bench.dataRates = List.of(PlainWaveform.certain(100, 200 * Bench.MILLI, 100 * Bench.MILLI)
                .with((listener, start) -> start > 6 * Bench.SECOND && start < 9 * Bench.SECOND ? 0 : 1));
        SessionResult restarted = run();
        bench.rules = new SessionRules(3, Bench.SECOND, 1, 3, true, 5, true, Bench.SECOND);
        SessionResult resumed = run();
        assertEquals(1, restarted.linksLost());
        assertEquals(
                restarted.filesDeliveredNanos().get(0),
                resumed.filesDeliveredNanos().get(0));
        long again = restarted.budget().nanosOf(Cause.REPEATED_PAYLOAD)
                - resumed.budget().nanosOf(Cause.REPEATED_PAYLOAD);
        assertTrue(again > 0, "nothing was sent again");
        assertEquals(restarted.progress().atNanos(0), resumed.progress().atNanos(0));
    }

    @Test
    void inTheSteadyStateNothingIsAllocatedPerEvent() {
        allocatedBytes(50_000);
        long few = allocatedBytes(50_000);
        long many = allocatedBytes(150_000);
        // What grows is the progress curve alone: two longs a rise, grown by doubling and copied at the end, twice.
        double bytesAnOver = (many - few) / 100_000.0;
        assertTrue(bytesAnOver < 120, "allocates " + bytesAnOver + " bytes an over");
    }

    /** Returns what a stop-and-wait session of so many frames allocates when every second frame is lost. */
    private long allocatedBytes(int frames) {
        bench.scheme = ArqScheme.STOP_AND_WAIT;
        bench.silencesToLost = 1000;
        bench.dataRates = List.of(PlainWaveform.losing(1, 0, Bench.MILLI, 0.5));
        bench.cargo = Cargo.from(End.NEAR, List.of((long) frames));
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        SessionResult result = bench.run(0);
        long after = threads.getCurrentThreadAllocatedBytes();
        assertTrue(result.oversSent() > 1.9 * frames);
        return after - before;
    }

    /** Loses just the first frame it is asked about. */
    private static final class LosesFirst implements PlainWaveform.Chance {
        private boolean hasLost;

        @Override
        public double of(End listener, long startNanos) {
            boolean loses = !hasLost;
            hasLost = true;
            return loses ? 0 : 1;
        }
    }

    /** Writes down what is on the air. */
    private static final class Listening implements SessionTrace {
        private final List<Integer> overs = new ArrayList<>();
        private final List<Integer> newFrames = new ArrayList<>();
        private final List<Message> messages = new ArrayList<>();
        private final List<String> decisions = new ArrayList<>();
        private final List<Long> overNanos = new ArrayList<>();
        private int deafOvers;

        List<Long> millisBetweenOvers() {
            return IntStream.range(1, overNanos.size())
                    .mapToObj(at -> (overNanos.get(at) - overNanos.get(at - 1)) / Bench.MILLI)
                    .toList();
        }

        long count(Message message) {
            return messages.stream().filter(it -> it == message).count();
        }

        @Override
        public void onSent(End from, Burst burst, long durationNanos) {
            messages.add(burst.message());
            if (burst.message() == Message.OVER) {
                overs.add(burst.frames());
                overNanos.add(burst.startNanos());
                newFrames.add(burst.newFrames());
            }
        }

        /** The bench's waveforms are found whenever the receiver listens. */
        @Override
        public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
            deafOvers += burst.message() == Message.OVER && !isHeard ? 1 : 0;
        }

        @Override
        public void onDataRate(End at, int before, int chosen, RatePolicy policy, long atNanos) {
            if (chosen != before) {
                decisions.add((chosen < before ? "down " : "up ") + before + " -> " + chosen + ": " + policy.reason());
            }
        }
    }
}
