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

    @Test
    void aModeKeepsItsColourWhicheverOthersAreShown() {
        ModeOrder all = new ModeOrder(List.of("Tortoise", "Hare", "Snail")).with(List.of("Ant", "Hare", "Sloth"));
        assertEquals(List.of("Hare", "Snail", "Tortoise", "Ant", "Sloth"), all.palette());
        ModeOrder some = all.among(List.of("Tortoise", "Ant"));
        assertEquals(List.of("Ant", "Tortoise"), some.names());
        assertEquals(all.style("Tortoise"), some.style("Tortoise"));
        assertEquals(all.style("Ant"), some.style("Ant"));
        assertEquals(2, some.lines().size());
        assertEquals(OptionalInt.of(5), all.among(List.of("Bee")).of("Bee"));
    }
}
