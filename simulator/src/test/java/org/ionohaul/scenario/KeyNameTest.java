package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class KeyNameTest {
    private static Scenario demo() throws ScenarioProblems {
        return ScenarioReader.read(SourceFiles.DISK, Path.of("../scenarios/river-watch.toml"), Map.of());
    }

    @ParameterizedTest
    @CsvSource({
        "far.snr, SNR at Flood desk",
        "near.station.hang, station hang at Osier Weir",
        "far.interference.1.visits, visits by others at Flood desk",
        "'far.interference.2.visits', 'visits by others, no. 2 at Flood desk'",
        "sky.path.2.doppler-spread, Doppler spread of path 2",
        "distance, length of the path",
        "horizon, horizon",
        "transfer.2.files.1.size, size of night roster",
        "transfer.1.deadlines, deadlines of photo",
        "transfer.9.deadlines, deadlines of a transfer",
        "modes.brisk-comb.arq.window, arq window of Brisk comb",
        "modes, modes",
        "snr, SNR"
    })
    void aKeyIsNamedByWhatItIsAndWhere(String key, String words) throws ScenarioProblems {
        assertEquals(words, KeyName.of(demo(), key).words());
        assertEquals(words + " (" + key + ")", KeyName.withKey(demo(), key));
    }

    @Test
    void whatBelongsToNoScenarioIsMadeWordsOf() {
        assertEquals("load", KeyName.plain("load"));
        assertEquals("who may call when", KeyName.plain("discipline.access"));
        assertEquals("stations of group 2", KeyName.plain("group.2.count"));
        assertEquals("group most calls, no. 2", KeyName.plain("group.2.most-calls"));
    }

    /** Names are those of keys that there are: a key that got another name is not forgotten here. */
    @Test
    void everyNameIsThatOfAKey() {
        for (String key : KeyName.named().toList()) {
            assertTrue(
                    KeyGuide.of("near." + key)
                            .or(() -> KeyGuide.of(key))
                            .or(() -> KeyGuide.of(NetFormat.TOP, List.of(key.split("\\.", -1))))
                            .isPresent(),
                    key);
        }
    }
}
