package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ionohaul.limits.OutOfRange;
import org.junit.jupiter.api.Test;

/** What a record refuses is the user's problem; what else goes wrong while it is built is the program's. */
final class RefusalsTest {
    private final Notes notes = new Notes();
    private final Section station = Document.open(
                    Path.of("station.toml"),
                    SourceFiles.of(Map.of("station.toml", "hang = \"1 s\"\nrelay = \"2 s\"\nrecovery = \"3 s\"")),
                    Map.of(),
                    "",
                    notes)
            .top(ScenarioFormat.STATION);

    @Test
    void aRefusedValueIsAProblemOfItsKeyAndBuildingGoesOnWithTheExample() {
        long built = station.build(() -> {
            long hangNanos = station.get(ScenarioFormat.HANG);
            OutOfRange.unless(hangNanos < 1_000_000_000, "hangNanos", "must be below relayNanos", hangNanos);
            return hangNanos;
        });
        assertEquals(30_000_000, built);
        assertEquals(
                List.of("station.toml:1:1: hang: must be below relay, but is \"1 s\""),
                notes.problems().stream().map(Problem::text).toList());
    }

    @Test
    void aFaultOfTheProgramIsNoProblemOfTheUserWhateverItsWords() {
        IllegalArgumentException fault = new IllegalArgumentException("hangNanos must not be negative: -1");
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class,
                () -> station.build(() -> {
                    throw fault;
                }));
        assertSame(fault, thrown);
        assertEquals(List.of(), notes.problems());
    }
}
