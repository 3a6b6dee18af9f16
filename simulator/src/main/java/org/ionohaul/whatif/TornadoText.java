package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.report.CaseName;
import org.ionohaul.report.StudyWords;

/** Which inputs matter most, for a terminal: for the best mode of each case, the keys in order of what they change. */
public final class TornadoText {
    private static final int WIDTH = 80;

    private final Tornado tornado;
    private final TornadoWords words;

    /** Prepares the report of a tornado with at least one bar. */
    public TornadoText(Tornado tornado) {
        this.tornado = tornado;
        this.words = new TornadoWords(tornado);
    }

    /** Returns the report's lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(TextWrap.lines(tornado.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(words.partial() + " " + words.basis(), "", WIDTH));
        List<CaseName> cases = CaseName.all(
                tornado.scenario(), tornado.bars().stream().map(TornadoBar::key).toList());
        for (int i = 0; i < cases.size(); i++) {
            lines.add("");
            addCase(lines, cases.get(i), i);
        }
        lines.add("");
        lines.addAll(TextWrap.lines(PointWords.CHANGE, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    private void addCase(List<String> lines, CaseName name, int index) {
        lines.addAll(TextWrap.lines(name.heading(), "", WIDTH));
        lines.add("=".repeat(Math.min(WIDTH, name.heading().length())));
        words.sentences(index).forEach(it -> lines.addAll(TextWrap.lines(it, "  ", WIDTH)));
        lines.add("");
        lines.addAll(new TextTable(new TornadoTables(tornado).ofMode(index, tornado.told(index))).lines(WIDTH));
    }
}
