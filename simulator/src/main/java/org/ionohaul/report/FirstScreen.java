package org.ionohaul.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.analysis.Findings;
import org.ionohaul.rendering.StyledLine;
import org.ionohaul.rendering.TextWrap;

/** What a study prints first, on one screen: the answer grid, and a sentence on each case. */
public final class FirstScreen {
    private final Findings findings;
    private final int mostCharacters;

    /**
     * Prepares the screen.
     *
     * @param findings what was found
     * @param mostCharacters longest line allowed, 40 or more
     */
    public FirstScreen(Findings findings, int mostCharacters) {
        this.findings = findings;
        this.mostCharacters = mostCharacters;
    }

    /** Returns the lines. */
    public List<StyledLine> lines() {
        List<StyledLine> lines = new ArrayList<>();
        wrapped(findings.result().scenario().title()).map(StyledLine::strong).forEach(lines::add);
        addText(lines, StudyWords.basis(findings));
        lines.addAll(new AnswerText(AnswerTable.of(findings.result(), findings.summary()), mostCharacters).lines());
        lines.add(StyledLine.plain(""));
        findings.summary()
                .cases()
                .forEach(it ->
                        addText(lines, AnswerWords.sentence(findings.result().scenario(), it)));
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
