package org.ionohaul.analysis;

import java.util.List;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.ModeTrials;

/**
 * Which share of a mode's trials is through by each of some instants.
 *
 * @param mode what people call the mode
 * @param shares one entry an instant, with Wilson's interval
 */
public record CompletionCurve(String mode, List<Estimate> shares) {
    /** Copies the list. */
    public CompletionCurve {
        shares = List.copyOf(shares);
    }

    /** Returns the curve of a mode at these instants, in seconds after pressing send. */
    public static CompletionCurve of(ModeTrials mode, List<Double> instantsSeconds) {
        OrderedSample completion = OrderedSample.of(mode.completionSeconds());
        return new CompletionCurve(
                mode.mode().title(),
                instantsSeconds.stream()
                        .map(it -> completion.atMost(it).wilson(Estimate.CONFIDENCE))
                        .toList());
    }
}
