package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.ionohaul.link.LadderRules;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
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
        ModelledFrame level = (ModelledFrame) mode.levels().get(0).frame();
        ModelledFrame call = (ModelledFrame) mode.call().frame();
        assertEquals(Modulation.QPSK, level.coding().modulation());
        assertEquals(Modulation.BPSK, call.coding().modulation());
        assertEquals(level.receiver(), call.receiver());
        assertEquals(level.coding().symbolRateBd(), call.coding().symbolRateBd());
    }

    @Test
    void eachPolicyReadsItsOwnKeys() throws ScenarioProblems, IOException {
        assertEquals(
                new LadderRules.ErrorRate(1, 0.05, 0.4, 0.25),
                withLadder("policy='error-rate'\nstart-level=1\nrise-below='5 %'\nfall-above='40 %'\nmemory='1/4'")
                        .ladder());
        assertEquals(new LadderRules.LatentSnr(1, 8, 0.4, 1.5), withLadder("""
                        policy = "latent-snr"
                        start-level = 1
                        prior-deviation = "8 dB"
                        forgetting = "0.4 dB/sqrt(s)"
                        estimate-deviation = "1.5 dB"
                        """).ladder());
    }

    @Test
    void aKeyOfAnotherPolicyIsRefused() {
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> withLadder("policy='fixed'\nstart-level=1\nmemory='25 %'"));
        assertEquals(
                List.of("ladder.memory"),
                problems.problems().stream().map(Problem::key).toList());
    }

    @Test
    void aStartLevelBeyondTheLastIsRefused() {
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> withLadder("policy='fixed'\nstart-level=2"));
        assertEquals("this mode has levels 1 to 1", problems.problems().get(0).remedy());
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
        String others = LadderFormat.POLICIES.stream()
                .filter(it -> it.name().equals(policy))
                .flatMap(it -> it.keys().stream())
                .filter(it -> !it.name().equals(key))
                .map(it -> it.name() + " = " + Kind.shown(it.example()) + "\n")
                .collect(Collectors.joining());
        ScenarioProblems problems =
                assertThrows(ScenarioProblems.class, () -> withLadder(line + "\npolicy = '" + policy + "'\n" + others));
        assertEquals(
                List.of("ladder." + key),
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
        ScenarioProblems problems = assertThrows(ScenarioProblems.class, () -> withLevel("payload = '9999999999 MB'"));
        assertEquals("is larger than 1000 MB", problems.problems().get(0).message());
    }

    @Test
    void aFrameMayBeMeasuredInPlaceOfModelled() throws ScenarioProblems, IOException {
        Mode mode = withLevel("""
                payload = "110 B"
                airtime = "0.9 s"
                measured-loss = ["2 dB: 80 %", "4 dB: 0.1"]
                """);
        assertEquals(
                List.of(new BurstShape(
                        0.18,
                        -9.3,
                        new MeasuredFrame(110, 0.9, 0, List.of(new Measurement(2, 0.8), new Measurement(4, 0.1))))),
                mode.levels());
    }

    @Test
    void aFrameMayStateItsBitsAndItsAirtime() throws ScenarioProblems, IOException {
        ModelledFrame frame = (ModelledFrame) withLevel("payload = '3 B'\nframe-bits = 30\nairtime = '210 ms'")
                .levels()
                .get(0)
                .frame();
        assertEquals(30, frame.informationBits());
        assertEquals(0.21, frame.airtimeSeconds());
        assertEquals(Coding.oneByOne(Modulation.QPSK, 1390, 2.0 / 3), frame.coding());
        assertEquals(0.0288, frame.receiver().trackingSeconds());
    }

    private Mode withLadder(String ladder) throws ScenarioProblems, IOException {
        return with("policy = \"fixed\"\nstart-level = 1\n", ladder + "\n");
    }

    private Mode withLevel(String level) throws ScenarioProblems, IOException {
        return with("[[level]]\npayload = \"110 B\"\n", "[[level]]\n" + level + "\n");
    }

    private Mode with(String old, String fresh) throws ScenarioProblems, IOException {
        String text = Files.readString(ShippedFilesTest.SCENARIOS.resolve("modes/steady-wagon.toml"));
        assertTrue(text.contains(old), old);
        return ScenarioReader.readMode(Files.writeString(folder.resolve("changed.toml"), text.replace(old, fresh)));
    }
}
