package org.ionohaul.nextrun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ionohaul.channel.End;
import org.ionohaul.learning.ScenarioModel;
import org.ionohaul.placing.Gauge;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.ScenarioText;
import org.ionohaul.scenario.SourceFiles;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.junit.jupiter.api.Test;

/** What may be read next, and what a meter without an error would show. */
final class ReadingsNextTest {
    /** States S4 and -112 dBm at the near end; S4 is -103 dBm (IARU Region 1, R.1). */
    private static final Path LEVELS = Path.of("../scenarios/polar-hut.toml");

    private static final Path RATIOS = Path.of("../scenarios/orchard-net.toml");
    private static final Map<String, String> UNSURE_NOISE = Map.of("far.noise", "-117 dBm ± 6 dB");

    private static NextQuestion question(Path scenario, Map<String, String> changed)
            throws ScenarioProblems, IOException {
        Understood understood = ScenarioReader.understand(SourceFiles.DISK, scenario, changed);
        Transfer transfer = understood.scenario().transfers().get(0);
        return new NextQuestion(
                understood,
                new ScenarioText(Files.readString(scenario), changed),
                Optional.empty(),
                Set.of(),
                0,
                transfer,
                Direction.UPLOAD,
                600,
                0.05,
                3600,
                List.of(),
                List.<LocalTime>of(),
                3);
    }

    private static Set<String> readings(NextQuestion question) {
        return question.candidates().stream()
                .filter(Candidate.Listen.class::isInstance)
                .map(Candidate.Listen.class::cast)
                .map(it -> it.end() + " " + it.what())
                .collect(Collectors.toSet());
    }

    @Test
    void whereLevelsAreStatedAMeterShowsEitherElsewhereTheirRatio() throws ScenarioProblems, IOException {
        assertEquals(
                Set.of("NEAR SIGNAL", "NEAR NOISE", "FAR SIGNAL", "FAR NOISE"),
                readings(question(LEVELS, UNSURE_NOISE)));
        assertEquals(Set.of("NEAR SNR", "FAR SNR"), readings(question(RATIOS, Map.of())));
    }

    @Test
    void aMeterShowsTheLevelItIsReadFor() throws ScenarioProblems, IOException {
        NextQuestion question = question(LEVELS, UNSURE_NOISE);
        ScenarioModel model =
                new ScenarioModel(question.understood(), question.text(), List.of(), Set.of(), 0, List.of());
        ScenarioWorld world = new ScenarioWorld(
                question.understood(), model, question.transfer(), Direction.UPLOAD, question.candidates(), 3600);
        double[] low = {-1};
        double[] high = {1};
        assertEquals(-103, world.shown(listen(question, End.NEAR, Gauge.What.SIGNAL), low, 0), 1e-9);
        assertEquals(-112, world.shown(listen(question, End.NEAR, Gauge.What.NOISE), high, 0), 1e-9);
        Candidate.Listen noise = listen(question, End.FAR, Gauge.What.NOISE);
        // One deviation either way; cutting the normal distribution off at three moves that by less than 0.05 dB.
        assertEquals(-123, world.shown(noise, low, 0), 0.1);
        assertEquals(-111, world.shown(noise, high, 0), 0.1);
        Candidate.Listen signal = listen(question, End.FAR, Gauge.What.SIGNAL);
        assertEquals(world.shown(signal, low, 0), world.shown(signal, high, 0), 1e-9, "it is known");
    }

    private static Candidate.Listen listen(NextQuestion question, End end, Gauge.What what) {
        return question.candidates().stream()
                .filter(Candidate.Listen.class::isInstance)
                .map(Candidate.Listen.class::cast)
                .filter(it -> it.end() == end && it.what() == what)
                .findFirst()
                .orElseThrow();
    }
}
