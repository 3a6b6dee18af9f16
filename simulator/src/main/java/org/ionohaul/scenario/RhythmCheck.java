package org.ionohaul.scenario;

import java.util.Locale;
import org.ionohaul.channel.End;
import org.ionohaul.link.ModeSpec;
import org.ionohaul.link.Timing;

/**
 * Whether modes whose stations keep a rhythm can keep it between the stations of a scenario: an over, both ways of the path,
 * both turnarounds and the acknowledgement must go into a cycle.
 *
 * @param top where the warnings belong
 */
record RhythmCheck(Section top) {
    /** Warns of each mode whose cycle is too short. */
    void warnOfShortCycles(Scenario scenario) {
        scenario.modes().stream().filter(mode -> mode.arq().hasRhythm()).forEach(mode -> warnIfShort(scenario, mode));
    }

    private void warnIfShort(Scenario scenario, Mode mode) {
        Timing timing = new Timing(
                new ModeSpec(mode.signals(), mode.arq(), mode.ratePolicy()),
                mode.times(scenario.station(End.NEAR).radio().times()),
                mode.times(scenario.station(End.FAR).radio().times()),
                scenario.propagationNanos());
        long spareNanos = mode.arq().cycleNanos() - timing.longestCycleNanos();
        if (spareNanos < 0) {
            double longestMetres = scenario.distanceMetres() + Scenario.metresToAndFro(spareNanos);
            String allowed = longestMetres > 0
                    ? String.format(Locale.ROOT, "up to %,.0f km", Math.floor(longestMetres / 1000))
                    : "over no distance, with these stations' hang, relay and recovery";
            top.warn(
                    ScenarioFormat.DISTANCE,
                    String.format(
                            Locale.ROOT,
                            "is too much for mode %s: its cycle lasts %.0f ms, and here over, acknowledgement,"
                                    + " turnarounds and both ways take %.1f ms, so acknowledgements come too late; it"
                                    + " works %s",
                            mode.name(),
                            mode.arq().cycleNanos() / 1e6,
                            timing.longestCycleNanos() / 1e6,
                            allowed));
        }
    }
}
