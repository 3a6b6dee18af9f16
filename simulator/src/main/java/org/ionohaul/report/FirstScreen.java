package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.analysis.StudySummary;
import org.ionohaul.rendering.StyledLine;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.study.StudyResult;

/** What a study prints first, on one screen: the answer grid, and a sentence on each case. */
public final class FirstScreen {
    private final StudyResult result;
    private final StudySummary summary;
    private final int mostCharacters;

    /**
     * Prepares the screen.
     *
     * @param result the trials of a study, at least one
     * @param summary what they come to
     * @param mostCharacters longest line allowed, 40 or more
     */
    public FirstScreen(StudyResult result, StudySummary summary, int mostCharacters) {
        this.result = result;
        this.summary = summary;
        this.mostCharacters = mostCharacters;
    }

    /** Returns the lines. */
    public List<StyledLine> lines() {
        List<StyledLine> lines = new ArrayList<>();
        wrapped(result.scenario().title()).map(StyledLine::strong).forEach(lines::add);
        addText(lines, StudyWords.basis(result));
        lines.addAll(new AnswerText(AnswerTable.of(result, summary), mostCharacters).lines());
        lines.add(StyledLine.plain(""));
        summary.cases().forEach(it -> addText(lines, AnswerWords.sentence(result.scenario(), it)));
        lines.add(StyledLine.plain(""));
        addText(lines, AnswerTable.READING);
        addText(lines, StudyWords.CAUTION);
        return lines;
    }

    private void addText(List<StyledLine> lines, String text) {
        wrapped(text).map(StyledLine::plain).forEach(lines::add);
    }

    private Stream<String> wrapped(String text) {
        return TextWrap.lines(text, "", mostCharacters).stream();
    }
}
