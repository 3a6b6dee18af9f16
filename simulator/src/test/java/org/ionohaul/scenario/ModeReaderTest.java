package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.ionohaul.link.LadderRules;
import org.ionohaul.waveform.BurstShape;
import org.ionohaul.waveform.Coding;
import org.ionohaul.waveform.MeasuredFrame;
import org.ionohaul.waveform.MeasuredFrame.Measurement;
import org.ionohaul.waveform.ModelledFrame;
import org.ionohaul.waveform.Modulation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
