package org.ionohaul.report;

import java.util.List;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.StudyResult;

/**
 * One thing to know about how the numbers were made.
 *
 * @param head what it is about
 * @param text what is said
 */
public record MethodItem(String head, String text) {
    static List<MethodItem> all(StudyResult result) {
        return List.of(
                new MethodItem(
                        "A trial",
                        "One simulated session, whatever the hour: the near station dials, sends or fetches the files,"
                                + " and hangs up, under a sky drawn by chance within what the scenario says. Every mode"
                                + " meets the same skies. A session is watched for "
                                + TimeText.given(result.scenario().horizonSeconds()) + " after pressing send."),
                new MethodItem(
                        "Through",
                        "The receiving station holds every byte of every file. That the sender knows it, and that both"
                                + " hang up, comes later and is counted apart."),
                new MethodItem(
                        "Bytes",
                        "Sizes, and bytes a minute, count the files as they go on the air: after the compression that"
                                + " the scenario states for them. What is compressed to half arrives at twice that pace"
                                + " when counted as the user's own bytes."),
                new MethodItem(
                        "By when",
                        "Quantiles: " + OrderedSample.QUANTILE_DEFINITION + ". Nothing is dropped or averaged away."),
                new MethodItem(
                        "Small print",
                        "Ranges are made to hold the true value in about 95 of 100 such studies, as far as chance in"
                                + " the simulation goes (made to hold the true value in about 95 of 100 such studies):"
                                + " distribution-free from order statistics for times, Wilson's for shares. They say"
                                + " nothing about a scenario that describes the wrong sky."));
    }
}
