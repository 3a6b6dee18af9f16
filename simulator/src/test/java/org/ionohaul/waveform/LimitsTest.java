package org.ionohaul.waveform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.limits.Limits;
import org.ionohaul.limits.OutOfRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a waveform may be made of: every limit from both sides, and the name of what is refused. */
final class LimitsTest {
    private static final Coding CODING = Coding.oneByOne(Modulation.QPSK, 1000, 0.5);
    private static final Receiver RECEIVER = new Receiver(0.002, 0.01, 1, 30);
    private static final List<MeasuredFrame.Measurement> LOSSES =
            List.of(new MeasuredFrame.Measurement(0, 0.9), new MeasuredFrame.Measurement(5, 0.1));

    @ParameterizedTest
    @MethodSource("all")
    void aLimitIsWhereItIsSaidToBe(Limits limits) {
        limits.hold();
    }

    private static Stream<Limits> all() {
        return Stream.of(ofBursts(), ofReceivers(), ofFrames()).flatMap(List::stream);
    }

    private static List<Limits> ofBursts() {
        return List.of(
                new Limits("bandwidthHz", "(0, 1e5)", it -> new Emission(it, 3)),
                new Limits("crestFactorDb", "[0, 30)", it -> new Emission(2400, it)),
                new Limits("preambleSeconds", "[0, 3600]", it -> new BurstShape(it, 0, frame(1, 0))),
                new Limits("detectionSnrDb", "(-200, 200)", it -> new BurstShape(0.1, it, frame(1, 0))),
                new Limits("symbolRateBd", "(0, 1e6)", it -> new Coding(Modulation.QPSK, 1, it, 0.5)),
                new Limits("codeRate", "(0, 1]", it -> new Coding(Modulation.QPSK, 1, 100, it)),
                new Limits("knownShare", "[0, 1)", it -> CODING.airtimeSeconds(100, it, 0)));
    }

    private static List<Limits> ofReceivers() {
        return List.of(
                new Limits("delayToleranceSeconds", "[0, 100)", it -> new Receiver(it, 0.01, 1, 30)),
                new Limits("trackingSeconds", "[0, 100)", it -> new Receiver(0.002, it, 1, 30)),
                new Limits("gapDb", "(-100, 100)", it -> new Receiver(0.002, 0.01, it, 30)),
                new Limits("ceilingDb", "(-1000, 1000)", it -> new Receiver(0.002, 0.01, 1, it)),
                new Limits(
                        "frequencyToleranceHz",
                        "[0, 1e4]",
                        it -> new Receiver(0.002, 0.01, 1, 30, it, Equaliser.LINEAR)),
                new Limits(
                        "impulseLimitDb", "[0, 100)", it -> new FrontEnd(Excision.NONE, ImpulseDefence.BLANKER, it)));
    }

    private static List<Limits> ofFrames() {
        return List.of(
                new Limits("airtimeSeconds", "(0, 3600]", it -> frame(it, 0)),
                new Limits("interleaverSeconds", "[0.5, 3600]", it -> frame(100, it)),
                new Limits("snrDb", "(-200, 200)", it -> new MeasuredFrame.Measurement(it, 0.5)),
                new Limits("loss", "(0, 1)", it -> new MeasuredFrame.Measurement(3, it)));
    }

    private static ModelledFrame frame(double airtimeSeconds, double interleaverSeconds) {
        return new ModelledFrame(CODING, RECEIVER, 10, 96, FrameCheck.WHOLE_FRAME, airtimeSeconds, interleaverSeconds);
    }

    @Test
    void countsThatAreTooSmallAreRefusedByName() {
        refused("carriers", () -> new Coding(Modulation.QPSK, 0, 100, 0.5));
        refused("carriers", () -> new Coding(Modulation.QPSK, 1_000_001, 100, 0.5));
        refused("informationBits", () -> CODING.airtimeSeconds(0, 0, 0));
        refused("payloadBytes", () -> new MeasuredFrame(-1, 1, 0, LOSSES));
        refused("informationBits", () -> new ModelledFrame(CODING, RECEIVER, 0, 0, FrameCheck.WHOLE_FRAME, 1, 0));
        refused("informationBits", () -> new ModelledFrame(CODING, RECEIVER, 0, 7, FrameCheck.CONTROL_SIGNAL, 1, 0));
        refused("informationBits", () -> new ModelledFrame(CODING, RECEIVER, 0, 3, FrameCheck.ONE_OF_FOUR, 1, 0));
        refused("overheadBytes", () -> ModelledFrame.ofBytes(CODING, RECEIVER, 0, 10, -1, 0));
        refused("payloadBytes", () -> ModelledFrame.ofBytes(CODING, RECEIVER, 0, 0, 0, 0));
        refused("losses", () -> new MeasuredFrame(10, 1, 0, LOSSES.subList(0, 1)));
    }

    @Test
    void measurementsMustFallWhileTheSnrRises() {
        refused("losses", () -> new MeasuredFrame(10, 1, 0, List.of(LOSSES.get(1), LOSSES.get(0))));
        MeasuredFrame.Measurement first = LOSSES.get(0);
        refused("losses", () -> new MeasuredFrame(10, 1, 0, List.of(first, at(5, first.loss()))));
        refused("losses", () -> new MeasuredFrame(10, 1, 0, List.of(first, at(first.snrDb(), 0.1))));
    }

    /** What is not an error: nothing but overhead, a single bit, and the smallest counts. */
    @Test
    void theSmallestFrames() {
        assertEquals(8, ModelledFrame.ofBytes(CODING, RECEIVER, 0, 0, 1, 0).informationBits());
        assertEquals(1, frameOfOneBit().informationBits());
        assertEquals(RECEIVER.frequencyToleranceHz(), frameOfOneBit().frequencyToleranceHz());
        assertEquals(75, new MeasuredFrame(0, 1, 0, LOSSES).frequencyToleranceHz());
    }

    private static ModelledFrame frameOfOneBit() {
        return new ModelledFrame(CODING, RECEIVER, 0, 1, FrameCheck.WHOLE_FRAME, 1, 0);
    }

    private static MeasuredFrame.Measurement at(double snrDb, double loss) {
        return new MeasuredFrame.Measurement(snrDb, loss);
    }

    private static void refused(String component, Runnable make) {
        assertEquals(
                component, assertThrows(OutOfRange.class, make::run, component).component());
    }
}
