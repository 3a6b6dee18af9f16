package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.ionohaul.channel.End;
import org.ionohaul.link.Burst;
import org.ionohaul.link.Message;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.ScenarioReader;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.waveform.ReferenceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * How often a reply that is wrong would pass its check, published in {@code results/reference/}: those heard and not decoded,
 * times the share of wrong ones that the reply's own check passes. To renew:
 *
 * <pre>
 * ./mvnw -pl simulator test -Dtest=WrongRepliesTest -Dgolden.renew=true
 * </pre>
 */
final class WrongRepliesTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    /** The evening on which these modes hardly link would tell nothing of them. */
    private static final List<String> AT_NOON = List.of("ax25-go-back-n", "ax25-selective-reject", "m625-arq");

    private static final String TABLE = "wrong-replies.csv";
    private static final int TRIALS = 40;
    private static final double ONE_IN_40_000_SESSIONS = 1 / 40_000.0;

    /**
     * Check bits of an acknowledgement, as the modes' files tell them. A control signal of ITU-R M.625 is one of three characters of
     * seven elements: of 128 that noise makes, two are others of the three, as if there were 6 bits. That of the low-latency
     * bursts carries two bits and no check.
     */
    private static final Map<String, Integer> CHECK_BITS = Map.of(
            "brisk-comb", 19,
            "patient-climber", 24,
            "slow-whistle", 10,
            "steady-wagon", 32,
            "serial-tone-arq", 16,
            "ax25-go-back-n", 16,
            "ax25-selective-reject", 16,
            "m625-arq", 6);

    @Test
    void theRepliesOfAModeAreStillLostAsOftenAsPublished() throws IOException, ScenarioProblems {
        CSVRecord line = ReferenceFile.read(TABLE).stream()
                .filter(it -> it.get("mode").equals("patient-climber"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                line.get("sessions") + "," + line.get("replies") + "," + line.get("not_decoded"),
                count("patient-climber").cells());
    }

    @Test
    void butForDirectPrintingAWrongReplyPassesInLessThanOneSessionIn40000() throws IOException {
        int checked = 0;
        for (CSVRecord line : ReferenceFile.read(TABLE)) {
            if (!line.get("mode").equals("m625-arq")) {
                double rate = Double.parseDouble(line.get("at_most"));
                assertTrue(rate < ONE_IN_40_000_SESSIONS, line.get("mode") + ": " + rate);
                checked++;
            }
        }
        assertEquals(CHECK_BITS.size() - 1, checked);
    }

    @Test
    @EnabledIfSystemProperty(named = "golden.renew", matches = "true")
    void renewTable() throws ScenarioProblems {
        ReferenceFile file = new ReferenceFile()
                .comment(
                        "Replies (acknowledgements) of the shipped modes in shipped scenarios: heard, and of those not decoded; how"
                                + " many of a session would be wrong and pass their own check of so many bits.")
                .comment("at_most: the upper end of a 95 % interval, if replies are lost one by one.")
                .comment("Taken as right where they pass in the model (its check is that of the mode's frames).")
                .comment("Renew: ./mvnw -pl simulator test -Dtest=WrongRepliesTest -Dgolden.renew=true")
                .row(
                        "program",
                        "scenario",
                        "mode",
                        "sessions",
                        "replies",
                        "not_decoded",
                        "check_bits",
                        "wrong_a_session",
                        "at_most");
        for (Map.Entry<String, Integer> entry : new TreeMap<>(CHECK_BITS).entrySet()) {
            String mode = entry.getKey();
            int bits = entry.getValue();
            Count count = count(mode);
            file.row(
                    ReferenceFile.programVersion(),
                    scenario(mode).getFileName(),
                    mode,
                    count.cells(),
                    bits,
                    String.format(Locale.ROOT, "%.1e", count.wrong(count.lost, bits)),
                    String.format(Locale.ROOT, "%.1e", count.wrong(count.mostLost(), bits)));
        }
        file.write(TABLE);
    }

    private static Path scenario(String mode) {
        return SCENARIOS.resolve(AT_NOON.contains(mode) ? "noon-hop.toml" : "river-watch.toml");
    }

    private static Count count(String mode) throws ScenarioProblems {
        Scenario scenario = ScenarioReader.read(scenario(mode), Map.of("modes", "[\"" + mode + "\"]"));
        Trials trials = new Trials(scenario);
        Count count = new Count();
        for (long trial = 0; trial < TRIALS; trial++) {
            for (Transfer transfer : scenario.transfers()) {
                for (Direction direction : transfer.directions()) {
                    trials.run(transfer, direction, scenario.modes().get(0), trial, count);
                    count.sessions++;
                }
            }
        }
        return count;
    }

    /** Counts the acknowledgements that a station hears. */
    private static final class Count implements SessionTrace {
        private int sessions;
        private int heard;
        private int lost;

        @Override
        public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
            if (burst.message() == Message.ACKNOWLEDGEMENT && isHeard) {
                heard++;
                lost += burst.decodedFrames() == 0 ? 1 : 0;
            }
        }

        double wrong(double notDecoded, int checkBits) {
            return Math.scalb(notDecoded, -checkBits) / sessions;
        }

        /** Returns how many would be expected at most, with 95 % confidence if they come one by one (Garwood 1936). */
        double mostLost() {
            return new ChiSquaredDistribution(2 * lost + 2).inverseCumulativeProbability(0.95) / 2;
        }

        String cells() {
            return sessions + "," + heard + "," + lost;
        }
    }
}
