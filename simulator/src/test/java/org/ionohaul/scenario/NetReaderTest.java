package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ionohaul.net.Arrivals;
import org.ionohaul.net.MessageKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A net's file says what it means, and what is wrong with it is told at its place. */
final class NetReaderTest {
    private static final Path VALLEY =
            ShippedFilesTest.SCENARIOS.resolve("nets").resolve("bridge-valley.toml");

    /** Ways of stating the same thing, of which a file uses one. */
    private static final String[] OTHER_WAYS = {
        "gateway.snr",
        "gateway.signal",
        "gateway.noise",
        "gateway.noise-environment",
        "gateway.power",
        "group.signal",
        "group.noise",
        "group.noise-environment",
        "group.power",
        "group.gateway.signal",
        "group.gateway.noise",
        "group.gateway.noise-environment",
        "group.gateway.power",
        "group.message.at",
        "group.message.after",
        "group.message.within",
        "group.message.pause",
        "group.message.rate",
        "sky.path"
    };

    @Test
    void theValleyIsReadAsItStands() throws ScenarioProblems {
        NetScenario net = read(Map.of());
        assertEquals(14, net.stations());
        assertEquals("Valley desk", net.nameOf(0));
        assertEquals("Shelter 14", net.nameOf(14));
        assertEquals(
                13,
                net.groups().get(0).pair().sky().conditions(key -> 0.5).far().snrDb(),
                1e-6);
        List<MessageKind> kinds = net.groups().get(0).kinds();
        assertEquals(new Arrivals.AfterEvent(300, 900), kinds.get(0).arrivals());
        assertEquals(new Arrivals.Poisson(1), kinds.get(1).arrivals());
        assertTrue(kinds.get(3).isForStation());
        assertEquals(1650, kinds.get(0).sizes().bytes(0.5), 1e-9);
        assertEquals(8, net.audibility().snrDb(0, 0, 0.5), 1e-6);
    }

    @Test
    void loadMultipliesWhatComesByChance() throws ScenarioProblems {
        assertEquals(
                new Arrivals.Poisson(2.5),
                read(Map.of("load", "2.5")).groups().get(0).kinds().get(1).arrivals());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            group.1.count              | 0             | group.1.count: must be from 1 to 500 stations, but is 0
            load                       | -1            | load: -1 is no number above 0 and up to 1000
            load                       | nan           | load: NaN is no number above 0 and up to 1000
            operators.redial-growth    | inf           | operators.redial-growth: Infinity is no number above 0 and up to 1000
            warm-up                    | 90 min        | warm-up: must be shorter than the horizon, but is "90 min"
            gateway.channels           | 21            | gateway.channels: must be from 1 to 20, but is 21
            group.1.gateway.snr        | 13            | group.1.gateway.snr: 13 has no unit
            group.1.message.2.rate     | 9999 /h       | group.1.message.2.rate: must be above 0 and at most 3600 an hour, but is "9999 /h"
            group.1.message.1.size     | 0 B .. 900 B  | group.1.message.1.size: can come out below 1 B or above 1 MB
            group.1.message.1.deadlines| ["2 h"]       | group.1.message.1.deadlines: is longer than the time that counts: no message can be watched for so long
            group.1.message.1.deadlines| ["18:30"]     | group.1.message.1.deadlines: is a time of day, but messages are written at any
            group.1.message.2.pause    | 4 min         | group.1.message.2: says in two ways when they are written
            operators.hold-off         | 5 s ± 1 s     | operators.hold-off: is neither a time nor a range
            discipline.access          | rooster       | discipline.access: "rooster" is not a valid choice
            modes                      | ["brisk-comb", "slow-whistle"] | modes: names 2 modes, but all stations of a net work the same one
            trials                     | 100000        | trials: gives some 5,180,000 messages over all trials; at most 5,000,000 can be kept
            load                       | 900           | load: gives some 34,034 messages a trial; at most 20,000 can be simulated
            """)
    void whatIsWrongIsToldAtItsKey(String key, String value, String told) {
        ScenarioProblems refused = assertThrows(ScenarioProblems.class, () -> read(Map.of(key, value)));
        assertEquals(1, refused.problems().size(), refused.told()::toString);
        assertTrue(refused.told().get(0).contains(told), refused.told().get(0));
    }

    static Stream<WrittenExamples.Place> keys() {
        // Paths stand in place of the condition that the examples have.
        return WrittenExamples.places(NetFormat.TOP).stream()
                .filter(it -> !it.name().startsWith("sky.path"));
    }

    @Test
    void theExamplesOfAllKeysGoTogether() throws ScenarioProblems, IOException {
        assertEquals(14, readExamples(Map.of()).stations());
    }

    /** None of the manual's keys is unknown to the reader, and none takes whatever stands there. */
    @ParameterizedTest
    @MethodSource("keys")
    void everyKeyIsReadAndRefusesNonsense(WrittenExamples.Place place) {
        ScenarioProblems refused =
                assertThrows(ScenarioProblems.class, () -> readExamples(Map.of(place.name(), "{ nonsense = true }")));
        assertTrue(
                refused.problems().stream().anyMatch(it -> it.key().equals(place.name())),
                () -> place.name() + ": " + refused.told());
        assertFalse(refused.problems().stream().anyMatch(it -> it.message().contains("no such key")));
    }

    @Test
    void aPairGivenAsANetAndANetGivenAsAPairAreRecognised() {
        Path pair = ShippedFilesTest.SCENARIOS.resolve("river-watch.toml");
        assertEquals(
                List.of(pair + ":1:1: describes a pair of stations, not a net\n    ionohaul study " + pair
                        + " says how long its files take"),
                assertThrows(ScenarioProblems.class, () -> NetReader.read(SourceFiles.DISK, pair, Map.of()))
                        .told());
        assertEquals(
                List.of(VALLEY + ":1:1: describes a net of stations, not a pair\n    ionohaul net " + VALLEY
                        + " says how its stations fare"),
                assertThrows(ScenarioProblems.class, () -> ScenarioReader.read(VALLEY))
                        .told());
        Path mode = ShippedFilesTest.SCENARIOS.resolve("modes").resolve("brisk-comb.toml");
        assertEquals(
                List.of(mode + ":1:1: is a mode file, not a net\n    ionohaul mode " + mode
                        + " shows what the mode can do; a net names it under modes"),
                assertThrows(ScenarioProblems.class, () -> NetReader.read(SourceFiles.DISK, mode, Map.of()))
                        .told());
        assertEquals(
                List.of(VALLEY + ":1:1: describes a net of stations, not a mode\n    ionohaul net " + VALLEY
                        + " says how its stations fare"),
                assertThrows(ScenarioProblems.class, () -> ScenarioReader.readMode(VALLEY))
                        .told());
    }

    private static NetScenario read(Map<String, String> overrides) throws ScenarioProblems {
        return NetReader.read(SourceFiles.DISK, VALLEY, overrides).scenario();
    }

    private static NetScenario readExamples(Map<String, String> overrides) throws ScenarioProblems, IOException {
        Map<String, String> texts = new HashMap<>();
        String[] others = Stream.of(OTHER_WAYS)
                .filter(it -> !it.equals("group.message.rate"))
                .toArray(String[]::new);
        texts.put(
                "net.toml",
                WrittenExamples.of(NetFormat.TOP, others)
                        .replace("\"fieldpost\"", "\"brisk-comb\"")
                        .replaceFirst("(?s)(\\[gateway].*?)Weir Cottage", "$1Desk")
                        .replaceFirst("(?s)(\\[\\[group]].*?)Weir Cottage", "$1shelters"));
        texts.put(
                "modes/brisk-comb.toml", Files.readString(ShippedFilesTest.SCENARIOS.resolve("modes/brisk-comb.toml")));
        return NetReader.read(SourceFiles.of(texts), Path.of("net.toml"), overrides)
                .scenario();
    }
}
