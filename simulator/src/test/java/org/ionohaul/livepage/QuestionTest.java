package org.ionohaul.livepage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be changed, and how an address says it. */
final class QuestionTest {
    private static final Path DEMO = Path.of("../scenarios/river-watch.toml");

    private static Question of(String query) throws ScenarioProblems, IOException {
        return Question.of(query, ScenarioOnPage.read(DEMO).controls());
    }

    private static Control control(String key) throws ScenarioProblems, IOException {
        return Optional.ofNullable(ScenarioOnPage.read(DEMO).controls().byKey().get(key))
                .orElseThrow();
    }

    @Test
    void theControlsOfTheDemoAreItsMainQuantitiesAsTheyAreWritten() throws ScenarioProblems, IOException {
        assertEquals("17 dB", control("near.snr").written());
        assertEquals("10 dB", control("far.snr").written());
        assertEquals("1 %", control("far.impulses.share").written());
        assertEquals("4 /h", control("far.interference.1.visits").written());
        assertEquals("38 kB", control("transfer.1.files.1.size").written());
        assertEquals(
                "Size of gauge at the weir", control("transfer.1.files.1.size").label());
        assertEquals("[\"10 min\", \"25 min\"]", control("transfer.1.deadlines").written());
        assertEquals("mid-latitude-disturbed-nvis", control("sky.condition").written());
        assertTrue(control("sky.condition").choices().contains("mid-latitude-quiet"));
        assertTrue(control("modes").choices().containsAll(List.of("brisk-comb", "serial-tone-arq")));
        assertEquals("41", control("seed").written());
    }

    /** Each control's own value is what the file says already; so is the whole file without any change. */
    @ParameterizedTest
    @ValueSource(strings = {"river-watch", "orchard-net", "lantern-school", "noon-hop"})
    void everyControlReadsBackWhatItShows(String name) throws ScenarioProblems, IOException {
        Path file = DEMO.resolveSibling(name + ".toml");
        ScenarioOnPage page = ScenarioOnPage.read(file);
        assertTrue(
                page.controls().byKey().size() >= 8,
                () -> "controls: " + page.controls().byKey().keySet());
        for (Control control : page.controls().byKey().values()) {
            Map<String, String> same = Map.of(control.key(), control.written());
            assertEquals(
                    ScenarioReader.read(file).toString().replaceAll("@[0-9a-f]+|Lambda[^,\\])]*", ""),
                    page.with(same).scenario().toString().replaceAll("@[0-9a-f]+|Lambda[^,\\])]*", ""),
                    control.key());
        }
        assertEquals(page.text(), page.saved(Map.of()));
    }

    @Test
    void anAddressSaysWhatIsNotAsInTheFile() throws ScenarioProblems, IOException {
        assertEquals(new Question(List.of(Map.of()), 0, Set.of()), of(""));
        assertEquals(
                new Question(List.of(Map.of("far.snr", "9 dB")), 2, Set.of()),
                of("far.snr=9+dB&near.snr=17%20dB&case=3"));
        assertEquals(3, of("case=77").place(), "the last of four");
        assertEquals(0, of("case=-1").place());
    }

    @Test
    void theSecondSettingIsReadWhenTwoAreComparedAndSharesModesTrialsAndSeed() throws ScenarioProblems, IOException {
        Question question = of("compare=yes&far.snr=9+dB&second.far.snr=13+dB&seed=7");
        assertEquals(
                List.of(Map.of("far.snr", "9 dB", "seed", "7"), Map.of("far.snr", "13 dB", "seed", "7")),
                question.settings());
        assertEquals(Set.of("far.snr"), question.keysThatDiffer());
        assertEquals(1, of("second.far.snr=13+dB").settings().size());
        assertEquals(Set.of("second.seed"), of("compare=yes&second.seed=8").unknown());
    }

    @Test
    void onlyControlsAreChanged() throws ScenarioProblems, IOException {
        Question question = of("near.name=Else&title=Else&modes.steady-wagon.arq.window=1&nonsense");
        assertEquals(List.of(Map.of()), question.settings());
        assertEquals(Set.of("modes"), of("modes=%5B%22../../etc/passwd%22%5D").unknown());
        assertEquals(
                List.of(Map.of("modes", "[\"steady-wagon\"]")),
                of("modes=%5B%22steady-wagon%22%5D").settings());
        assertEquals(Set.of("near.name", "title", "modes.steady-wagon.arq.window", "nonsense"), question.unknown());
    }
}
