package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.junit.jupiter.api.Test;

final class ModeBenchTest {
    @Test
    void theSheetOfOneSpeedFollowsFromItsFile() throws ScenarioProblems {
        // steady-wagon: 66 bytes at rate 1/2 on BPSK are 1056 symbols; 70 % of 1390 Bd: 1.08530 s a frame, 0.18 s of
        // preamble; seven frames an over. Its acknowledgement: 48 bits at rate 1/8, 384 symbols: 0.39466 s, and 0.54 s.
        ModeCard card = new ModeBench(ScenarioReader.readMode(Path.of("../scenarios/modes/steady-wagon.toml"))).card();
        ModeCard.DataRate dataRate = card.dataRates().get(0);
        assertEquals(1, card.dataRates().size());
        assertEquals(0.18 + 1.08530, dataRate.frameSeconds(), 1e-4);
        assertEquals(0.18 + 7 * 1.08530, dataRate.overSeconds(), 1e-4);
        assertEquals(0.54 + 0.39466, card.acknowledgementSeconds(), 1e-4);
        // Answer: 80 ms of processing and 15 ms of relay outlast the other end's hang, relay and recovery of 45 ms.
        assertEquals(0.095, card.answerSeconds(), 1e-9);
        double cycle = dataRate.overSeconds() + card.acknowledgementSeconds() + 2 * 0.095 + 2 * 1e6 / 299_792_458;
        assertEquals(8 * 7 * 60 / cycle, dataRate.netBitsPerSecond(), 1e-3);
    }

    /** A reply that tells what is held is taken as right; of two bits without a check a third of the wrong ones is not. */
    @Test
    void onlyAnswersOfOneWordAreMistaken() throws ScenarioProblems {
        assertEquals(0, mistakenReplies("ax25-go-back-n"));
        double printing = mistakenReplies("m625-arq");
        double bursts = mistakenReplies("burst-low-latency");
        // Where 1 block in 10 is lost, noise alone makes at most 1 signal in 128 the other one; 1 two-bit word in 3.
        assertTrue(printing > 1e-7 && printing < 0.1 / 128, "direct printing " + printing);
        assertTrue(bursts > 1e-7 && bursts < 0.1 / 3, "bursts " + bursts);
    }

    private static double mistakenReplies(String mode) throws ScenarioProblems {
        return new ModeBench(ScenarioReader.readMode(Path.of("..", "scenarios", "modes", mode + ".toml")))
                .card()
                .mistakenReplies();
    }

    @Test
    void fadingCostsAndSlowModesTakeTheirTime() throws ScenarioProblems {
        ModeCard card = new ModeBench(ScenarioReader.readMode(Path.of("../scenarios/modes/steady-wagon.toml"))).card();
        ModeCard.OnPath flat = card.dataRates().get(0).paths().get(0);
        ModeCard.OnPath poor = card.dataRates().get(0).paths().get(2);
        assertTrue(poor.hundredthLostDb() > flat.hundredthLostDb() + 3);
        assertTrue(flat.curve().get(0).loss() > 0.5
                && flat.curve().get(flat.curve().size() - 1).loss() < 0.01);
        double slowest = 0;
        for (ModeCard.ErrorFree transfer : card.errorFree()) {
            assertTrue(transfer.deliveredSeconds() > slowest && transfer.closedSeconds() > transfer.deliveredSeconds());
            slowest = transfer.deliveredSeconds();
            // Never faster than its net rate.
            assertTrue(8 * transfer.bytes() / transfer.deliveredSeconds()
                    < card.dataRates().get(0).netBitsPerSecond());
        }
    }
}
