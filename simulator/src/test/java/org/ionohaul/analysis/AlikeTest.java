package org.ionohaul.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.statistics.DiscordantPairs;
import org.ionohaul.statistics.PairedTimes;
import org.junit.jupiter.api.Test;

/** By how much modes may differ that can't be told apart. */
final class AlikeTest {
    @Test
    void ofSeveralPairsTheFurthestApartAreTold() {
        assertEquals(new Alike(0.2, 5), new Alike(0.1, 5).and(new Alike(0.2, 3)));
    }

    /** One is a second sooner on 60 trials and a second later on 40; 3 against 1 of them keep the deadline alone. */
    @Test
    void theBoundReachesFurtherThanWhatWasSeen() {
        double[] first = IntStream.range(0, 100).mapToDouble(i -> 100).toArray();
        double[] second =
                IntStream.range(0, 100).mapToDouble(i -> i < 60 ? 101 : 99).toArray();
        Alike alike = Alike.of(PairedTimes.of(first, second), List.of(new DiscordantPairs(3, 1)), 0.05);
        assertEquals(1, alike.seconds());
        assertTrue(alike.share() > 0.02 && alike.share() < 0.1, alike::toString);
    }
}
