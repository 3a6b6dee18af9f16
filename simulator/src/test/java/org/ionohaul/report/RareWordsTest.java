package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.ionohaul.rare.RareChance;
import org.ionohaul.rare.RareMiss;
import org.ionohaul.scenario.Direction;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.Proportion;
import org.ionohaul.study.InventedStudy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RareWordsTest {
    @ParameterizedTest
    @CsvSource({
        "0.5, 1 in 2",
        "0.3, 1 in 3.3",
        "0.1001, 1 in 10",
        "0.1, 1 in 10",
        "0.01234, 1 in 81",
        "0.00012, '1 in 8,300'",
        "0.0000011, '1 in 910,000'"
    })
    void chancesAreOneInSoMany(double chance, String words) {
        assertEquals(words, RareWords.oneIn(chance));
    }

    private static RareMiss miss(int hits, Optional<RareChance> found) {
        return new RareMiss(
                InventedStudy.LETTER,
                Direction.DOWNLOAD,
                InventedStudy.mode("hare"),
                120,
                new Proportion(hits, 1000),
                found);
    }

    private static Optional<RareChance> chance(int arrived) {
        return Optional.of(new RareChance(new Estimate(0.0002, 0.0001, 0.0005), 0.0001, 300, arrived, 4711));
    }

    private static String text(RareMiss miss) {
        List<String> lines =
                RareWords.lines(InventedStudy.scenario(1000, InventedStudy.LETTER, "hare"), List.of(miss), 100);
        return String.join(" ", lines).replaceAll(" +", " ");
    }

    /** The worse end leads; under twenty arrivals it is that of the count: none of 1000, exactly 1 - 0.025^(1/1000) at most. */
    @Test
    void aRangeIsToldOfTwentyArrivalsOnAndElseWhatWasCounted() {
        String told = text(miss(0, chance(20)));
        assertTrue(told.contains("letter within 2 min, from far to near"), told);
        assertTrue(told.contains("Hare 1 in 2,000 1 in 5,000 0 of 1,000 1 in 10,000 to 1 in 2,000"), told);
        String untold = text(miss(0, chance(19)));
        assertTrue(untold.contains("Hare 1 in 270 not told 0 of 1,000 as counted 19 of 300 led there"), untold);
        assertTrue(!untold.contains("1 in 5,000"), untold);
        assertTrue(text(miss(0, Optional.empty())).contains("nothing led there"));
    }

    @Test
    void withoutARareMissThatIsSaid() {
        List<String> lines =
                RareWords.lines(InventedStudy.scenario(1000, InventedStudy.LETTER, "hare"), List.of(), 100);
        assertTrue(lines.get(lines.size() - 1).contains("counted, not rare"), lines::toString);
    }

    @Test
    void theFileHasTheSameRangesAndLeavesEmptyWhatIsNotTold() throws IOException {
        StringWriter text = new StringWriter();
        new RareCsv(List.of(miss(3, chance(20)), miss(3, chance(19)), miss(3, Optional.empty()))).writeTo(text);
        String same = "letter,download,hare,120.0,3,1000,";
        assertEquals(
                List.of(same + "2.0E-4,1.0E-4,5.0E-4,300,20,4711", same + ",,,300,19,4711", same + ",,,,,"),
                text.toString().lines().skip(1).toList());
    }
}
