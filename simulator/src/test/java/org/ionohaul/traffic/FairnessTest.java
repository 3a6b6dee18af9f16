package org.ionohaul.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ionohaul.net.MessageKind;
import org.ionohaul.scenario.NetScenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.trial.NetTrial;
import org.junit.jupiter.api.Test;

/** Jain's index as its authors have it: (sum x)^2 / (n sum x^2) of each station's share of messages through. */
final class FairnessTest {
    /** Each station writes two messages; the numbers say how many of them are through. */
    private static NetFindings findings(Map<String, String> changes, int... through) throws ScenarioProblems {
        NetScenario scenario = new ValleyNet(changes, 1).scenario();
        MessageKind kind = scenario.groups().get(0).kinds().get(0);
        List<NetTrial.Message> messages = new ArrayList<>();
        for (int station = 1; station <= through.length; station++) {
            for (int number = 0; number < 2; number++) {
                long written = 600_000_000_000L * (number + 1);
                long delivered = number < through[station - 1] ? written + 60_000_000_000L : NetTrial.NEVER;
                messages.add(new NetTrial.Message(kind, station, 100, written, written, delivered, NetTrial.NEVER, 1));
            }
        }
        return NetFindings.of(scenario, List.of(new NetTrial(messages, 0, 0, 0, 0, 0, 0, List.of())));
    }

    @Test
    void allAlikeIsOneAndOneHavingAllIsItsShare() throws ScenarioProblems {
        assertEquals(1, findings(Map.of(), 1, 1, 1, 1).fairness().value(), 1e-12);
        assertEquals(0.25, findings(Map.of(), 2, 0, 0, 0).fairness().value(), 1e-12);
        // (1 + 1/2)^2 / (2 (1 + 1/4))
        assertEquals(0.9, findings(Map.of(), 2, 1).fairness().value(), 1e-12);
    }

    /** The first message of each is written after 10 minutes, the second after 20. */
    @Test
    void whatIsWrittenInTheWarmUpDoesNotCountInTheAnswers() throws ScenarioProblems {
        NetFindings all = findings(Map.of(), 1, 1);
        NetFindings late = findings(Map.of("warm-up", "15 min"), 1, 1);
        assertEquals(4, all.kinds().get(0).writtenPerTrial());
        assertEquals(2, late.kinds().get(0).writtenPerTrial());
        assertEquals(0.5, all.through().orElseThrow().value());
        assertEquals(0, late.through().orElseThrow().value(), "the second ones are not through");
        assertEquals(1, all.kinds().get(0).deadlines().size() - 1);
        assertEquals(2, late.backlog().atEnd().value(), "they wait all the same");
    }
}
