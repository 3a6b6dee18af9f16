package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.FilePromises;
import org.ionohaul.analysis.SizePromises;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;

/** What may be promised, for a terminal: the plain sentence first, then a table a mode. */
public final class PromiseReport {
    /** Longest line, in characters. */
    public static final int WIDTH = 80;

    private static final String SAFE =
            " which is made to hold in about 95 of 100 such studies, whichever mode is picked.";

    /** What is said of sizes wherever they are shown. */
    static final String SAFE_SIZES = "Sizes are safe: on at least so many trials such a file is through," + SAFE
            + " Sizes are as they go on the air, rounded down to preferred numbers, so that some are alike.";

    /** What is said of times wherever they are shown. */
    static final String SAFE_TIMES = "Times are safe: on at least so many trials the file is through by then," + SAFE
            + " Open: on so many trials it may not be through within the time watched. The size is as it goes on the air.";

    private static final String SIZES_IN_PRINT =
            " Small print: the size up to which the trials leave it open. What stops a larger file: what kept, at the"
                    + " confidence asked for, those trials that did not have the next larger file through.";

    private static final String TIMES_IN_PRINT = " Else: what kept the trials that were late.";

    private final StudyResult result;
    private final LimitWords limits;
    private final List<String> lines = new ArrayList<>();

    private PromiseReport(StudyResult result) {
        this.result = result;
        this.limits = new LimitWords(result.scenario());
        add(result.scenario().title());
        add(StudyWords.basis(result));
    }

    /**
     * Returns which sizes may be promised by a deadline.
     *
     * @param result a study of {@link org.ionohaul.study.SizeTransfers}, with at least one trial done
     * @param promises what it comes to, an entry a direction
     */
    public static List<String> ofSizes(StudyResult result, List<SizePromises> promises) {
        PromiseReport report = new PromiseReport(result);
        promises.forEach(it -> report.addSection(it.direction(), new SizePromiseWords(it, report.limits).lines(WIDTH)));
        return report.ended(SAFE_SIZES + SIZES_IN_PRINT);
    }

    /**
     * Returns how surely a file is through by a deadline, and the deadlines that may be promised for it.
     *
     * @param result a study of that one file, with at least one trial done
     * @param promises what it comes to, an entry a direction
     */
    public static List<String> ofFile(StudyResult result, List<FilePromises> promises) {
        PromiseReport report = new PromiseReport(result);
        promises.forEach(it ->
                report.addSection(it.summary().direction(), new FilePromiseWords(it, report.limits).lines(WIDTH)));
        return report.ended(SAFE_TIMES + TIMES_IN_PRINT);
    }

    private void addSection(Direction direction, List<String> section) {
        Scenario scenario = result.scenario();
        String heading = CaseWords.capital(CaseWords.route(scenario, direction));
        lines.add("");
        lines.add(heading);
        lines.add("=".repeat(heading.length()));
        lines.addAll(section);
    }

    private List<String> ended(String smallPrint) {
        lines.add("");
        add(smallPrint);
        add(StudyWords.CAUTION);
        return List.copyOf(lines);
    }

    private void add(String text) {
        lines.addAll(TextWrap.lines(text, "", WIDTH));
    }
}
