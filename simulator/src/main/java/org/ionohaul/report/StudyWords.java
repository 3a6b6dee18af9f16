package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.Findings;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.StudyResult;

/** What is said about a study as a whole. */
public final class StudyWords {
    /** What must be said wherever numbers are shown. */
    public static final String CAUTION =
            "A training and planning aid. Follow your local licence rules and your unit's plan; never"
                    + " stake a life on one number.";

    /** What the ranges and quantiles mean. */
    static final String RANGES =
            "Ranges are made to hold the true value in about 95 of 100 such studies, as far as chance in the"
                    + " simulation goes; of a wrong guess in the scenario they know nothing. A mode is named alone only"
                    + " where it is ahead of every other beyond chance. Quantiles: "
                    + OrderedSample.QUANTILE_DEFINITION + ".";

    /** What the model leaves out, an item a line. */
    public static final List<String> LIMITS = List.of(
            "Propagation is not predicted: how strong the path is, how it fades and how it changes over the hour are what"
                    + " the scenario says. A wrong guess there outweighs everything else here.",
            "Fading follows the Watterson model, a few paths with Gaussian gains; it holds for channels narrower than some"
                    + " 10 kHz and for minutes, not for sporadic events, storms or fade-outs.",
            "Receivers are a formula: mutual information, a gap and a ceiling fitted to published requirements. Filters,"
                    + " gain control, tuning errors, drifting oscillators and overdriven amplifiers are not simulated.",
            "Other stations come and go by chance and do not react to you; a gateway that is busy with someone else is"
                    + " counted only as far as the scenario says so.",
            "People are left out: typing, finding the frequency, tuning the antenna, flat batteries.",
            "Modes are what their files say. Real equipment that differs in timing or coding gives other results.");

    private static final String BESIDES_INTERRUPTED =
            "PARTIAL: interrupted while files of other sizes were sent, or files at steady levels, or rare misses were looked at; what"
                    + " is said of them rests on fewer trials than asked for, or is missing.";

    private StudyWords() {}

    /** Returns what the numbers rest on. */
    static String basis(StudyResult result) {
        String trials = SizeText.grouped(result.trialsDone())
                + " simulated trials, each mode under the same sky, seed "
                + result.scenario().seed() + ".";
        return result.isPartial() ? interrupted(result) + " " + trials : trials;
    }

    /** Returns what the numbers of a whole study rest on. */
    static String basis(Findings findings) {
        return findings.besidesAreCutShort()
                ? BESIDES_INTERRUPTED + " " + basis(findings.result())
                : basis(findings.result());
    }

    /** Returns the warning on a study that was interrupted; empty for any other. */
    public static String partial(Findings findings) {
        if (findings.result().isPartial()) {
            return interrupted(findings.result());
        }
        return findings.besidesAreCutShort() ? BESIDES_INTERRUPTED : "";
    }

    private static String interrupted(StudyResult result) {
        return "PARTIAL: interrupted after " + SizeText.grouped(result.trialsDone()) + " of "
                + SizeText.grouped(result.trialsAsked()) + " trials.";
    }

    /** Returns what made a report, and how to get it again. */
    static String origin(StudyResult result, Provenance provenance) {
        return "Made by ionohaul " + provenance.version() + " with seed "
                + result.scenario().seed() + " and "
                + result.trialsDone() + " trials. The same version, files, seed and trials give the same numbers,"
                + " whatever the number of threads.";
    }
}
