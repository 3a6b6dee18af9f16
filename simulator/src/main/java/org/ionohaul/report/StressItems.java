package org.ionohaul.report;

import java.util.List;
import java.util.stream.Collectors;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.StudyResult;

/**
 * The items that the STRESS guidelines ask of whoever reports a discrete-event simulation, filled in: T. Monks, C. S. M.
 * Currie, B. S. Onggo, S. Robinson, M. Kunc and S. J. E. Taylor, "Strengthening the reporting of empirical simulation
 * studies", Journal of Simulation 13 (2019), doi:10.1080/17477778.2018.1442155.
 */
final class StressItems {
    private static final String PURPOSE = "To tell operators, instructors and planners how long file transfers over a"
            + " narrow-band HF radio link take with different modes, how surely they keep a deadline, and what decides"
            + " it.";
    private static final String OUTPUTS = "For each transfer, direction and mode: share delivered; quantiles of the"
            + " completion time, from pressing send until the receiver holds every byte; chance of each deadline; bytes a"
            + " minute; how sessions end; mean time spent on each cause; use of the speed levels; modes compared pairwise"
            + " under the same skies.";
    private static final String OVERVIEW = "Press send, listen, call until answered, introduce, offer files; then"
            + " over: preamble and frames out, turnaround, acknowledgement back, turnaround, until all is confirmed; hang"
            + " up. A link that stays silent too long is lost, and dialled anew or given up.";
    private static final String LOGIC =
            "Two stations share one frequency, one sending at a time. The channel is a function of time, the same for"
                    + " every mode of a trial: Watterson fading on a few paths, slow variation of the level, a trend over"
                    + " the clock, noise and other stations at each end. For every burst the model works out whether it is"
                    + " noticed and which frames are decoded, acknowledgements included, and the stations act on nothing"
                    + " but what they decode and measure.";
    private static final String ALGORITHMS = "Frames: mutual information averaged over time and sub-bands, error"
            + " probability by the finite-blocklength normal approximation; uncoded frames by closed-form bit error rates."
            + " Checks: where a mode's file says which, a wrong frame passes a sum of n bits once in 2^n, and a file with one"
            + " counts as not delivered, unless the scenario accepts errors."
            + " Repeats: stop-and-wait, go-back-N or selective repeat, with or without combining, as the mode says. Speed:"
            + " the policy that the mode's file names.";
    private static final String COMPONENTS =
            "Entities: files, frames, bursts. Activities: calls, overs, acknowledgements, turnarounds, pauses."
                    + " Resources: the frequency and the two stations. Queue: frames not yet acknowledged, in order,"
                    + " within the mode's window. Entry: pressing send. Exit: hung up, given up, or the horizon.";
    private static final String DATA =
            "The scenario and mode files below. Whether their values were measured, estimated"
                    + " or invented, their comments say; the model's own constants cite their sources in the code.";
    private static final String DIFFERENCES = "When a pair differs most: of six measures of the sky (the SNR that"
            + " half and nine tenths of the time are above, the time with other stations on the air, at either end) the"
            + " one that explains most of the spread of leads over up to 200 trials (correlation ratio of ranks, F"
            + " test at 1 % for all six together); it goes with the lead, which need not mean that it causes it.";
    private static final String SPREAD = "Why trials differ: trials sorted by an unknown input are cut into groups,"
            + " and what the groups' mean ranks by completion time differ by beyond chance is that input's share (first"
            + " order; epsilon squared, F test at 1 %); the rest is luck and what only several inputs together explain."
            + " What a measurement is worth: the standard deviation of a deadline's chance given the input, by the same"
            + " means. Intervals by the jackknife over 25 blocks of trials.";
    private static final String SIZES = "Files of other sizes: each trial's times stay as they came; as a larger"
            + " file can't be likelier to arrive in time, quantiles and shares are put in rising order over sizes"
            + " (rearrangement: Chernozhukov, Fernandez-Val and Galichon, Biometrika 96(3), 2009).";
    private static final String BEST_MODE = "The best mode is picked after the fact. Of two modes that is better which"
            + " keeps a deadline more often by McNemar's exact test (without deadlines: delivers more often) or, where no"
            + " deadline tells, is through first more often by the sign test; a mode is out if any other is better, and"
            + " one alone is named only if all others are out (subset selection). Each pair may err with 5 % over the"
            + " number of other modes, corrected after Holm for its tests, so that a mode is named wrongly in at most 5 of"
            + " 100 studies, a case at a time. Modes that are not told apart come with the largest difference that the"
            + " trials leave open (Bonett and Price for chances, order statistics for the median lead, both after"
            + " Bonferroni). Times to plan for are one-sided tolerance limits (Wilks), corrected for the number of modes"
            + " among which the best is picked. Numbers of a mode that is picked as the best of several that are alike"
            + " flatter by up to a standard error, within the ranges shown.";
    private static final String INITIALISATION =
            "No warm-up: a trial begins when the operator presses send; the fading and"
                    + " the other stations are stationary processes by then.";
    private static final String EXECUTION =
            "Events run in order of time, ties in the order scheduled; time is counted in whole nanoseconds. Trials"
                    + " run in parallel; the result does not depend on the number of threads.";
    private static final String SYSTEM =
            "Java 17 or later; the same type of machine and Java give the same bytes, another"
                    + " processor may differ in the last digit of a mathematical function. The run takes seconds to"
                    + " minutes and less than 512 MB of memory.";
    private static final String ACCESS =
            "Source code under the Apache licence 2.0, with the tests that check it against"
                    + " published values; the input files are part of this report.";

    private final Scenario scenario;
    private final StudyResult result;
    private final Provenance provenance;

    private StressItems(StudyResult result, Provenance provenance) {
        this.scenario = result.scenario();
        this.result = result;
        this.provenance = provenance;
    }

    static List<MethodItem> of(StudyResult result, Provenance provenance) {
        StressItems items = new StressItems(result, provenance);
        return List.of(
                item("1.1 Purpose of the model", PURPOSE),
                item("1.2 Model outputs", OUTPUTS),
                item("1.3 Aims of this experiment", items.aims()),
                item("2.1 Base model overview", OVERVIEW),
                item("2.2 Base model logic", LOGIC),
                item("2.3 Scenario logic", items.scenarioLogic()),
                item("2.4 Algorithms", ALGORITHMS),
                item("2.5 Components", COMPONENTS),
                item("3.1 Data sources", DATA),
                item("3.2 Input parameters", items.inputs()),
                item(
                        "3.3 Pre-processing",
                        "Units are converted; files count by their size"
                                + " after the compression that the scenario states."),
                item("3.4 Assumptions", String.join(" ", StudyWords.LIMITS)),
                item("4.1 Initialisation", INITIALISATION),
                item("4.2 Run length", items.runLength()),
                item("4.3 Estimation approach", items.estimation()),
                item(
                        "5.1 Software",
                        "ionohaul " + provenance.version() + ", a Java program with its own event engine."),
                item("5.2 Random sampling", items.sampling()),
                item("5.3 Model execution", EXECUTION),
                item("5.4 System specification", SYSTEM),
                item("6.1 Access to the model", ACCESS));
    }

    private String aims() {
        String end = scenario.title().matches(".*[.?!]") ? " " : ". ";
        return scenario.title() + end
                + scenario.transfers().stream().map(CaseWords::heading).collect(Collectors.joining("; "))
                + "; compared: " + modes() + ".";
    }

    private String scenarioLogic() {
        return "One scenario; the alternatives are the modes (" + modes()
                + ") and the directions. Everything else is equal" + " within a trial.";
    }

    private String inputs() {
        return "Files, by SHA-256: "
                + provenance.inputs().stream()
                        .map(it -> it.name() + " " + it.sha256())
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private String runLength() {
        return "Each trial ends by itself or after " + TimeText.given(scenario.horizonSeconds()) + ". Trials: "
                + result.trialsDone() + " of " + result.trialsAsked() + " asked for.";
    }

    private String estimation() {
        return "Independent trials; common skies for all modes. Quantiles: " + OrderedSample.QUANTILE_DEFINITION
                + ". Intervals made to hold the true value in about 95 of 100 such studies, from order"
                + " statistics for quantiles and Wilson's for shares; exact"
                + " sign tests for pairs. " + DIFFERENCES + " " + SPREAD + " " + SIZES + " " + BEST_MODE;
    }

    private String sampling() {
        return "Philox 4x64, a counter-based generator; every stream is addressed by seed (" + scenario.seed()
                + "), trial and purpose, so that modes meet the same skies and no stream depends on another.";
    }

    private String modes() {
        return scenario.modes().stream().map(Mode::title).collect(Collectors.joining(", "));
    }

    private static MethodItem item(String head, String text) {
        return new MethodItem(head, text);
    }
}
