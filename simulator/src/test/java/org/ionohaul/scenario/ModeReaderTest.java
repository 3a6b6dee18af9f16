package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.ionohaul.rate.RatePolicyRules;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.Excision;
import org.ionohaul.waveform.FrontEnd;
import org.ionohaul.waveform.ImpulseDefence;
import org.ionohaul.waveform.MeasuredFrame;
import org.ionohaul.waveform.MeasuredFrame.Measurement;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ModeReaderTest {
    private final Path folder;

    ModeReaderTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void aBurstInheritsWhatItDoesNotSayItself() throws ScenarioProblems {
        Mode mode = ScenarioReader.readMode(ShippedFilesTest.SCENARIOS.resolve("modes/steady-wagon.toml"));
        ModelledFrame dataRate = (ModelledFrame) mode.dataRates().get(0).frame();
        ModelledFrame call = (ModelledFrame) mode.call().frame();
        assertEquals(1.0 / 2, dataRate.coding().codeRate());
        assertEquals(1.0 / 8, call.coding().codeRate());
        assertEquals(dataRate.receiver(), call.receiver());
        assertEquals(dataRate.coding().symbolRateBd(), call.coding().symbolRateBd());
    }

    @Test
    void eachPolicyReadsItsOwnKeys() throws ScenarioProblems, IOException {
        assertEquals(
                new RatePolicyRules.ErrorRate(1, 0.05, 0.4, 0.25),
                withRatePolicy("policy='error-rate'\nstart-rate=1\nrise-below='5 %'\nfall-above='40 %'\nmemory='1/4'")
                        .ratePolicy());
        assertEquals(
                new RatePolicyRules.LatentSnr(1, 8, 0.4, 1.5),
                withRatePolicy("""
                        policy = "latent-snr"
                        start-rate = 1
                        prior-deviation = "8 dB"
                        forgetting = "0.4 dB/sqrt(s)"
                        estimate-deviation = "1.5 dB"
                        """).ratePolicy());
    }

    @Test
    void aKeyOfAnotherPolicyIsRefused() {
        ScenarioProblems problems = assertThrows(
                ScenarioProblems.class, () -> withRatePolicy("policy='fixed'\nstart-rate=1\nmemory='25 %'"));
        assertEquals(
                List.of("rate-policy.memory"),
                problems.problems().stream().map(Problem::key).toList());
    }

    @Test
    void aStartDataRateBeyondTheLastIsRefused() {
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> withRatePolicy("policy='fixed'\nstart-rate=2"));
        assertEquals(
                "this mode has data rates 1 to 1", problems.problems().get(0).remedy());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "count | good-to-rise = 0",
                "count | bad-to-fall = 0",
                "count | bad-share = '0 %'",
                "count | bad-share = '101 %'",
                "error-rate | rise-below = '-1 %'",
                "error-rate | rise-below = '40 %'",
                "error-rate | fall-above = '101 %'",
                "error-rate | memory = '0 %'",
                "snr-lookup | target-loss = '0 %'",
                "snr-lookup | target-loss = '100 %'",
                "snr-lookup | hysteresis = '-1 dB'",
                "snr-lookup | correction-step = '-1 dB'",
                "snr-lookup | estimate-deviation = '-1 dB'",
                "expected-airtime | sampling-share = '100 %'",
                "expected-airtime | memory = '101 %'",
                "latent-snr | prior-deviation = '0 dB'",
                "latent-snr | estimate-deviation = '-1 dB'",
            },
            quoteCharacter = '`')
    void aValueOutsideTheManualsRangeIsRefusedWhereItStands(String policy, String line) {
        String key = line.substring(0, line.indexOf(' '));
        String others = RatePolicyFormat.POLICIES.stream()
                .filter(it -> it.name().equals(policy))
                .flatMap(it -> it.keys().stream())
                .filter(it -> !it.name().equals(key))
                .map(it -> it.name() + " = " + Kind.shown(it.example()) + "\n")
                .collect(Collectors.joining());
        ScenarioProblems problems = assertThrows(
                ScenarioProblems.class, () -> withRatePolicy(line + "\npolicy = '" + policy + "'\n" + others));
        assertEquals(
                List.of("rate-policy." + key),
                problems.problems().stream().map(Problem::key).toList());
        Problem problem = problems.problems().get(0);
        assertTrue(problem.line() > 1 && problem.message().startsWith("must "), problem::text);
    }

    @Test
    void aShortOverAboveTheLongOneIsOneProblem() {
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> with("short-over = 7 ", "short-over = 1007 "));
        assertEquals(
                List.of("arq.long-over"),
                problems.problems().stream().map(Problem::key).toList());
    }

    @Test
    void aSizeBeyondAllBoundsIsToldInWords() {
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> withDataRate("payload = '9999999999 MB'"));
        assertEquals("is larger than 1000 MB", problems.problems().get(0).message());
    }

    @Test
    void aFrameMayBeMeasuredInPlaceOfModelled() throws ScenarioProblems, IOException {
        Mode mode = withDataRate("""
                payload = "110 B"
                airtime = "0.9 s"
                measured-loss = ["2 dB: 80 %", "4 dB: 0.1"]
                """);
        assertEquals(
                List.of(new BurstShape(
                        0.18,
                        -9.3,
                        new FrontEnd(Excision.NONE, ImpulseDefence.LIMITER, 3),
                        new MeasuredFrame(110, 0.9, 0, List.of(new Measurement(2, 0.8), new Measurement(4, 0.1))))),
                mode.dataRates());
    }

    @Test
    void aFrameMayStateItsBitsAndItsAirtime() throws ScenarioProblems, IOException {
        ModelledFrame frame = (ModelledFrame) withDataRate("payload = '3 B'\nframe-bits = 30\nairtime = '210 ms'")
                .dataRates()
                .get(0)
                .frame();
        assertEquals(30, frame.informationBits());
        assertEquals(0.21, frame.airtimeSeconds());
        assertEquals(Coding.oneByOne(Modulation.BPSK, 1390, 1.0 / 2), frame.coding());
        assertEquals(0.0288, frame.receiver().trackingSeconds());
    }

    private Mode withRatePolicy(String ratePolicy) throws ScenarioProblems, IOException {
        return with("policy = \"fixed\"\nstart-rate = 1\n", ratePolicy + "\n");
    }

    private Mode withDataRate(String dataRate) throws ScenarioProblems, IOException {
        return with("[[rate]]\npayload = \"60 B\"\n", "[[rate]]\n" + dataRate + "\n");
    }

    private Mode with(String old, String fresh) throws ScenarioProblems, IOException {
        String text = Files.readString(ShippedFilesTest.SCENARIOS.resolve("modes/steady-wagon.toml"));
        assertTrue(text.contains(old), old);
        return ScenarioReader.readMode(Files.writeString(folder.resolve("changed.toml"), text.replace(old, fresh)));
    }
}
