package org.ionohaul.scenario;

import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What a scenario would come to in sessions and bursts. What could not be simulated in the life of a computer, or held in
 * its memory, is a problem of the file, found before anything runs.
 *
 * @param top where the problems belong
 */
record Workload(Section top) {
    private static final int MOST_SESSIONS_A_TRIAL = 1000;
    private static final double MOST_BURSTS_A_SESSION = 10e6;

    /** Adds a problem for whatever would be too much. */
    void refuseExcess(Scenario scenario) {
        int ways = scenario.transfers().stream()
                .mapToInt(transfer -> transfer.directions().size())
                .sum();
        int sessions = ways * scenario.modes().size();
        if (sessions > MOST_SESSIONS_A_TRIAL) {
            top.problem(
                    ScenarioFormat.MODES,
                    "give " + sessions + " sessions in each trial (each mode with each transfer, each way); at most "
                            + MOST_SESSIONS_A_TRIAL + " can be simulated",
                    "compare fewer modes, or make more than one scenario of the transfers");
        }
        for (Mode mode : scenario.modes()) {
            refuseBursts(mode, scenario.horizonSeconds());
        }
    }

    private void refuseBursts(Mode mode, double horizonSeconds) {
        double bursts = horizonSeconds / shortestSeconds(mode);
        if (bursts > MOST_BURSTS_A_SESSION) {
            top.problem(
                    ScenarioFormat.HORIZON,
                    String.format(
                            Locale.ROOT,
                            "has room for %,.0f frames or bursts of mode %s, which has some of %s; at most %,.0f can be"
                                    + " simulated",
                            bursts,
                            mode.name(),
                            milliseconds(mode),
                            MOST_BURSTS_A_SESSION),
                    "shorten the horizon, or look whether the mode's symbol-rate, airtime and preamble are right");
        }
    }

    private static String milliseconds(Mode mode) {
        return String.format(Locale.ROOT, "%.3g ms", 1e3 * shortestSeconds(mode));
    }

    /** An over's frames follow each other without preambles; other bursts have one each. */
    private static double shortestSeconds(Mode mode) {
        DoubleStream frames =
                mode.dataRates().stream().mapToDouble(rate -> rate.frame().airtimeSeconds());
        DoubleStream bursts = Stream.of(mode.acknowledgement(), mode.call(), mode.control())
                .mapToDouble(burst -> burst.preambleSeconds() + burst.frame().airtimeSeconds());
        return DoubleStream.concat(frames, bursts).min().orElseThrow();
    }
}
