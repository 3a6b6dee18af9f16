package org.ionohaul.sheet;

import java.util.List;
import java.util.Locale;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Understood;
import org.ionohaul.scenario.Warning;
import org.ionohaul.trial.Rhythm;

/** Warns of modes that can't keep their rhythm over a scenario's path. */
public final class RhythmWarnings {
    private RhythmWarnings() {}

    /** Returns a warning for each such mode, at the length of the path. */
    public static List<Warning> of(Understood understood) {
        return Rhythm.allOf(understood.scenario()).stream()
                .filter(rhythm -> !rhythm.isKept())
                .map(rhythm -> understood.distance().warning(message(understood.scenario(), rhythm), remedy(rhythm)))
                .toList();
    }

    private static String message(Scenario scenario, Rhythm rhythm) {
        boolean isTooSlow = rhythm.farthestNanos() < 0;
        return String.format(
                Locale.ROOT,
                "%s for mode %s, whose overs leave every %.0f ms: %s",
                isTooSlow
                        ? "hang, relay and recovery of the stations are too long"
                        : SizeText.grouped(scenario.distanceMetres() / 1000) + " km is too far",
                rhythm.mode().name(),
                rhythm.mode().arq().cycleNanos() / 1e6,
                isTooSlow
                        ? "who has acknowledged one can't hear yet when the next comes"
                        : "acknowledgements come too late for that");
    }

    private static String remedy(Rhythm rhythm) {
        double kilometres = Scenario.metresTravelled(rhythm.farthestNanos()) / 1000;
        return rhythm.farthestNanos() < 0
                ? "make them shorter if they are, or take another mode"
                : "with these stations it works up to " + SizeText.grouped(Math.floor(kilometres)) + " km";
    }
}
