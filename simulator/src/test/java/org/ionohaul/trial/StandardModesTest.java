package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.ionohaul.channel.End;
import org.ionohaul.channel.FadingCondition;
import org.ionohaul.link.ArqScheme;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.Outcome;
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Combining;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Waveform;
import org.ionohaul.waveform.Waveforms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Modes from open standards against the standards' own arithmetic. */
final class StandardModesTest {
    private static final Path MODES = Path.of("..", "scenarios", "modes");

    @Test
    void directPrintingCarriesThreeCharactersIn450Milliseconds() throws ScenarioProblems {
        // ITU-R M.625: 210 ms of block, 70 ms of control signal, 170 ms for both turnarounds: 6.6667 characters a
        // second.
        Mode mode = mode("m625-arq");
        long block = dataRate(mode, 1).burstNanos(1);
        long control = waveform(mode, mode.acknowledgement()).burstNanos(1);
        assertEquals(210_000_000, block);
        assertEquals(70_000_000, control);
        assertEquals(450_000_000, mode.arq().cycleNanos());
        assertEquals(32, mode.arq().silencesToLost());
    }

    /** What the sheet says of unnoticed errors happens: each block of a file is wrong so often, on the same path. */
    @Test
    void directPrintingDeliversAsManyWrongBlocksAsItsSheetSays() throws IOException, ScenarioProblems {
        double snrDb = -4;
        int blocks = 40;
        int trials = 500;
        Mode mode = mode("m625-arq");
        double wrong = new LossOnPath(
                        dataRate(mode, 1),
                        new FadingSkies(
                                FadingCondition.FLAT.paths(), mode.emission().passband(), 1, 1))
                .unnoticedErrors(snrDb);
        assertTrue(wrong > 0.002 && wrong < 0.1, "wrong " + wrong);
        Scenario scenario = SteadyPath.read("m625-arq", snrDb, 3 * blocks, 100).scenario();
        Trials all = new Trials(scenario);
        int right = 0;
        for (long trial = 0; trial < trials; trial++) {
            SessionResult result = all.run(trial).get(0);
            right += result.deliveredNanos().isPresent() ? 1 : 0;
            assertEquals(result.deliveredNanos().isEmpty(), result.outcome() == Outcome.DELIVERED_WRONG);
        }
        double expected = Math.pow(1 - wrong, blocks);
        double standardError = Math.sqrt(expected * (1 - expected) / trials);
        assertEquals(expected, (double) right / trials, 4 * standardError);
    }

    /** Every direct-printing over is found by whoever listens: one that is not met a station that could not hear yet. */
    @Test
    void noDirectPrintingOverMeetsADeafEndOnThePolarPath() throws ScenarioProblems {
        Scenario scenario =
                ScenarioReader.read(Path.of("..", "scenarios", "polar-hut.toml"), Map.of("modes", "[\"m625-arq\"]"));
        Transfer transfer = scenario.transfers().get(0);
        int[] overs = new int[2];
        for (Direction direction : transfer.directions()) {
            for (long trial = 0; trial < 5; trial++) {
                new Trials(scenario).run(transfer, direction, scenario.modes().get(0), trial, new SessionTrace() {
                    @Override
                    public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
                        if (burst.message() == Message.OVER || burst.message() == Message.POLL) {
                            overs[isHeard ? 1 : 0]++;
                        }
                    }
                });
            }
        }
        assertEquals(0, overs[0]);
        assertTrue(overs[1] > 2000, "heard " + overs[1]);
    }

    @ParameterizedTest
    @CsvSource({"ax25-go-back-n, GO_BACK_N, 7", "ax25-selective-reject, SELECTIVE_REPEAT, 32"})
    void packetFramesHaveTheBitsOfTheSpecification(String name, ArqScheme scheme, int window) throws ScenarioProblems {
        // AX.25 v2.2: an I frame of 256 octets without repeaters has 2208 bits, 7.3600 s at 300 Bd; one stuffed bit in
        // 62
        // between the flags makes 7.4778 s. An S frame has 152 bits, 154.19 stuffed. k as in 6.3.2.
        Mode mode = mode(name);
        ModelledFrame information = frame(mode.dataRates().get(0));
        assertEquals(2208, information.informationBits());
        assertEquals(7.3600, information.coding().airtimeSeconds(2208, 0, 0), 1e-12);
        assertEquals((16 + 2192 * 63.0 / 62) / 300, information.airtimeSeconds(), 1e-4);
        ModelledFrame supervisory = frame(mode.acknowledgement());
        assertEquals(152, supervisory.informationBits());
        assertEquals((16 + 136 * 63.0 / 62) / 300, supervisory.airtimeSeconds(), 1e-4);
        assertEquals(scheme, mode.arq().scheme());
        assertEquals(window, mode.arq().windowFrames());
        // T1, from the last bit sent, is at least twice the longest frame and its answer (6.7.1.1).
        double t1 = mode.arq().marginNanos() * 1e-9
                + waveform(mode, mode.acknowledgement()).burstNanos(1) * 1e-9;
        assertTrue(t1 >= 2 * (information.airtimeSeconds() + supervisory.airtimeSeconds()));
    }

    @ParameterizedTest(name = "data rate {0}: {1} bps")
    @CsvSource({
        "1, 75",
        "2, 150",
        "3, 300",
        "4, 600",
        "5, 1200",
        "6, 2400",
        "7, 3200",
        "8, 4800",
        "9, 6400",
        "10, 8000",
        "11, 9600"
    })
    void serialToneRatesAreExact(int dataRate, int bitsPerSecond) throws ScenarioProblems {
        // MIL-STD-188-110: symbol rate x unknown share x bits a symbol x code rate; Appendix C comes to 1600 x bits.
        ModelledFrame frame = frame(mode("serial-tone-arq").dataRates().get(dataRate - 1));
        assertEquals(bitsPerSecond, frame.informationBits() / frame.airtimeSeconds(), 1e-6);
        assertEquals(8 * (200 + 15 + 4), frame.informationBits());
    }

    @ParameterizedTest(name = "data rate {0} in white noise: {1} dB")
    @CsvSource({"6, 10", "7, 9", "8, 13", "9, 16", "10, 19", "11, 21"})
    void serialToneRatesNeedInWhiteNoiseWhatTheStandardDemands(int dataRate, double snrDb) throws ScenarioProblems {
        // Coded bit error rate of 1e-5 (MIL-STD-188-110, from memory), four wrong bits a frame that is hit, with the
        // limiter in place; by the mean power, where a full carrier's is meant.
        Mode mode = mode("serial-tone-arq");
        FadingSkies white =
                new FadingSkies(FadingCondition.FLAT.paths(), mode.emission().passband(), 1, 1);
        double needDb = new LossOnPath(dataRate(mode, dataRate), white)
                .needDb(1e-5 * frame(mode.dataRates().get(dataRate - 1)).informationBits() / 4);
        // Frames longer than those by which the gaps were found need up to 0.2 dB less at the same bit error rate.
        assertEquals(snrDb - 0.1, needDb - mode.emission().crestFactorDb(), 0.2);
    }

    @Test
    void serialToneOversFillWholeInterleaversAndKeepTheWindow() throws ScenarioProblems {
        Mode mode = mode("serial-tone-arq");
        assertEquals(128, mode.arq().windowFrames());
        assertEquals(255 * 500_000_000L, mode.arq().longestOverNanos());
        // 2400 bps: 128 frames of 1752 bits last 93.44 s: 20 interleavers of 4.8 s after a preamble of 4.8 s.
        assertEquals(21 * 4_800_000_000L, dataRate(mode, 6).burstNanos(128));
    }

    @Test
    void burstsLastAsLongAsTheStandardSays() throws ScenarioProblems {
        // STANAG 4538: symbols over 2400 Bd; BW0 1472, BW1 3136, BW2 1536 + 960 n, BW3 896 + 32 n, BW4 1536.
        Mode high = mode("burst-high-rate");
        Mode low = mode("burst-low-latency");
        assertSymbols(1472, waveform(high, high.call()).burstNanos(1));
        assertSymbols(1472, waveform(low, low.call()).burstNanos(1));
        assertSymbols(3136, waveform(high, high.acknowledgement()).burstNanos(1));
        assertSymbols(3136, waveform(low, low.control()).burstNanos(1));
        for (int packets : new int[] {3, 6, 12, 24}) {
            assertSymbols(1536 + 960 * packets, dataRate(high, 1).burstNanos(packets));
        }
        assertSymbols(896 + 32 * 128, dataRate(low, 1).burstNanos(1));
        assertSymbols(1536, waveform(low, low.acknowledgement()).burstNanos(1));
        assertEquals(8 * 128 + 25, frame(low.dataRates().get(0)).informationBits());
    }

    @ParameterizedTest(name = "{0} packets: at most {1} bps")
    @CsvSource({"3, 1777", "6, 2573", "12, 3315", "24, 3874"})
    void highRateLinkWithoutTurnarounds(int packets, int bitsPerSecond) throws ScenarioProblems {
        Mode mode = mode("burst-high-rate");
        long nanos = dataRate(mode, 1).burstNanos(packets)
                + waveform(mode, mode.acknowledgement()).burstNanos(1);
        assertEquals(bitsPerSecond, 8e9 * 233 * packets / nanos, 0.5);
    }

    @Test
    void lowLatencyLinkWithoutTurnarounds() throws ScenarioProblems {
        Mode mode = mode("burst-low-latency");
        long nanos = dataRate(mode, 1).burstNanos(1)
                + waveform(mode, mode.acknowledgement()).burstNanos(1);
        assertEquals(376, 8e9 * 128 / nanos, 0.5);
    }

    private static void assertSymbols(int symbols, long nanos) {
        assertEquals(symbols / 2400.0, nanos * 1e-9, 3e-9);
    }

    private static Mode mode(String name) throws ScenarioProblems {
        return ScenarioReader.readMode(MODES.resolve(name + ".toml"));
    }

    private static Waveform dataRate(Mode mode, int dataRate) {
        return waveform(mode, mode.dataRates().get(dataRate - 1));
    }

    private static Waveform waveform(Mode mode, BurstShape burst) {
        return Waveforms.of(burst, mode.emission(), Combining.NONE);
    }

    private static ModelledFrame frame(BurstShape burst) {
        return (ModelledFrame) burst.frame();
    }
}
