package org.ionohaul.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
import org.ionohaul.session.SessionResult;
import org.ionohaul.session.SessionTrace;
import org.ionohaul.waveform.ReferenceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * How often a reply that is wrong would pass its check, published in {@code results/reference/}: those heard and not decoded,
 * times the share of wrong ones that the reply's own check passes; and how many answers of one word are acted upon wrongly. To
 * renew:
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

    /** Answers of one word, control signals or two bits: one that is wrong is acted upon in the simulation. */
    private static final List<String> ONE_WORD = List.of("burst-low-latency", "m625-arq");

    /** Check bits of an acknowledgement, as the modes' files tell them. */
    private static final Map<String, Integer> CHECK_BITS = Map.of(
            "brisk-comb", 19,
            "patient-climber", 24,
            "slow-whistle", 10,
            "steady-wagon", 32,
            "serial-tone-arq", 16,
            "ax25-go-back-n", 16,
            "ax25-selective-reject", 16);

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
    void aWrongReplyUnderACheckPassesInLessThanOneSessionIn40000() throws IOException {
        int checked = 0;
        for (CSVRecord line : ReferenceFile.read(TABLE)) {
            if (!ONE_WORD.contains(line.get("mode"))) {
                double rate = Double.parseDouble(line.get("at_most"));
                assertTrue(rate < ONE_IN_40_000_SESSIONS, line.get("mode") + ": " + rate);
                checked++;
            }
        }
        assertEquals(CHECK_BITS.size(), checked);
    }

    @Test
    @EnabledIfSystemProperty(named = "golden.renew", matches = "true")
    void renewTable() throws ScenarioProblems {
        ReferenceFile file = new ReferenceFile()
                .comment(
                        "Replies (acknowledgements) of the shipped modes in shipped scenarios: heard, and of those not decoded; how"
                                + " many of a session are wrong and pass.")
                .comment(
                        "With check_bits: one in 2^bits of those not decoded is, if noise fills them, and the model takes it as right.")
                .comment(
                        "Without: answers of one word; mistaken: so many were taken for the other word and acted upon; spoiled:"
                                + " files delivered wrong in sessions with one.")
                .comment("at_most: the upper end of a 95 % interval, if replies are lost, or mistaken, one by one.")
                .comment("Renew: ./mvnw -pl simulator test -Dtest=WrongRepliesTest -Dgolden.renew=true")
                .row(
                        "program",
                        "scenario",
                        "mode",
                        "sessions",
                        "replies",
                        "not_decoded",
                        "check_bits",
                        "mistaken",
                        "spoiled",
                        "wrong_a_session",
                        "at_most");
        Set<String> modes = new TreeSet<>(CHECK_BITS.keySet());
        modes.addAll(ONE_WORD);
        for (String mode : modes) {
            Count count = count(mode);
            boolean isWord = ONE_WORD.contains(mode);
            int bits = CHECK_BITS.getOrDefault(mode, 0);
            int events = isWord ? count.mistaken : count.lost;
            file.row(
                    ReferenceFile.programVersion(),
                    scenario(mode).getFileName(),
                    mode,
                    count.cells(),
                    isWord ? "" : bits,
                    isWord ? count.mistaken : "",
                    isWord ? count.spoiled : "",
                    String.format(Locale.ROOT, "%.1e", count.aSession(events, bits)),
                    String.format(Locale.ROOT, "%.1e", count.aSession(mostExpected(events), bits)));
        }
        file.write(TABLE);
    }

    /** Returns how many would be expected at most, with 95 % confidence if they come one by one (Garwood 1936). */
    private static double mostExpected(int events) {
        return new ChiSquaredDistribution(2 * events + 2).inverseCumulativeProbability(0.95) / 2;
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
                    int before = count.mistaken;
                    SessionResult result =
                            trials.run(transfer, direction, scenario.modes().get(0), trial, count);
                    count.sessions++;
                    count.spoiled += count.mistaken > before && result.wrongFrames() > 0 ? 1 : 0;
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
        private int mistaken;
        private int spoiled;

        @Override
        public void onArrived(End at, Burst burst, boolean isHeard, long atNanos) {
            if (burst.message() == Message.ACKNOWLEDGEMENT && isHeard) {
                heard++;
                lost += burst.decodedFrames() == 0 ? 1 : 0;
            }
        }

        @Override
        public void onWrongReply(End at, boolean asRepeat, long atNanos) {
            mistaken++;
        }

        double aSession(double events, int checkBits) {
            return Math.scalb(events, -checkBits) / sessions;
        }

        String cells() {
            return sessions + "," + heard + "," + lost;
        }
    }
}
