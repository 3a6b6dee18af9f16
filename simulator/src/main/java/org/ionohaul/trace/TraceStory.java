package org.ionohaul.trace;

import java.util.List;
import java.util.Locale;
import org.ionohaul.rendering.EndingText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.SessionResult;

/**
 * The story of one session: which one it was, what happened, what came of it.
 *
 * @param scenario what was simulated
 * @param transfer what was sent
 * @param direction which way
 * @param mode with which mode
 * @param trial number of the trial
 * @param recorder what happened
 * @param result what came of it
 * @param wrongRateNanos airtime lost by not having the best data rate of each moment, in nanoseconds
 */
public record TraceStory(
        Scenario scenario,
        Transfer transfer,
        Direction direction,
        Mode mode,
        long trial,
        TraceRecorder recorder,
        SessionResult result,
        long wrongRateNanos) {
    List<TraceStep> steps() {
        return recorder.steps();
    }

    /** Returns a line that says which session it is. */
    String title() {
        return String.format(
                Locale.ROOT,
                "%s: %s, %s with %s, trial %d (seed %d)",
                scenario.title(),
                transfer.name(),
                direction.name().toLowerCase(Locale.ROOT),
                mode.title(),
                trial,
                scenario.seed());
    }

    /** Returns a sentence that says how it ended. */
    String ending() {
        String outcome = result.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String delivered = result.deliveredNanos().isPresent()
                ? "delivered after "
                        + TimeText.length(1e-9 * result.deliveredNanos().getAsLong())
                : "not delivered: " + heldBytes() + " of " + transfer.totalBytes() + " bytes arrived"
                        + (result.wrongFrames() > 0 ? " before the first wrong one" : "");
        return String.format(
                Locale.ROOT,
                "Outcome: %s; %s, ended after %s (%s); %s, %d overs, %d acknowledgements lost.",
                outcome,
                delivered,
                TimeText.length(1e-9 * result.endedNanos()),
                EndingText.of(result.ending()),
                linkLost(result.linksLost()),
                result.oversSent(),
                result.acknowledgementsLost());
    }

    private static String linkLost(int times) {
        return switch (times) {
            case 0 -> "link never lost";
            case 1 -> "link lost once";
            case 2 -> "link lost twice";
            default -> "link lost " + times + " times";
        };
    }

    private long heldBytes() {
        int rises = result.progress().size();
        return rises == 0 ? 0 : result.progress().heldBytes(rises - 1);
    }
}
