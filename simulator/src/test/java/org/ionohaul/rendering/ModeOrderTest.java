package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class ModeOrderTest {
    @Test
    void modesTakeTheirColoursInOrderOfTheirNamesWhateverTheOrderOfTheScenario() {
        ModeOrder order = new ModeOrder(List.of("Tortoise", "Hare", "Snail"));
        assertEquals(OptionalInt.of(0), order.of("Hare"));
        assertEquals(OptionalInt.of(1), order.of("Snail"));
        assertEquals(OptionalInt.of(2), order.of("Tortoise"));
        assertEquals(OptionalInt.empty(), order.of("any of 3 modes"));
    }
}
