package org.ionohaul.onair;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.report.StudyWords;

/** What runs on the air can tell, for a terminal: plain words first. */
public final class RunsText {
    private static final int WIDTH = 80;
    private static final int MOST_PLANS = 4;

    private final RunsWords words;
    private final RunsTables tables;
    private final RunAnswer answer;

    /** Prepares the text. */
    public RunsText(RunAnswer answer) {
        this.answer = answer;
        this.words = new RunsWords(answer);
        this.tables = new RunsTables(answer);
    }

    /** Returns the lines. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(
                TextWrap.lines(answer.findings().question().scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(words.basis(), "", WIDTH));
        lines.add("");
        List<String> heading = TextWrap.lines(words.heading(), "", WIDTH);
        lines.addAll(heading);
        lines.add("=".repeat(heading.get(heading.size() - 1).length()));
        words.sentences().forEach(it -> lines.addAll(TextWrap.lines(it, "  ", WIDTH)));
        add(lines, brief(tables.naming(Rule.BARE)));
        add(lines, brief(tables.tests()));
        add(lines, brief(tables.stops()));
        for (int power = 0; power < RunAnswer.POWERS.size(); power++) {
            add(lines, tables.plans(power, MOST_PLANS));
        }
        add(lines, tables.needed());
        lines.add("");
        lines.addAll(TextWrap.lines(words.exactness(), "", WIDTH));
        lines.addAll(TextWrap.lines(RunsWords.READING, "", WIDTH));
        lines.addAll(TextWrap.lines(RunsWords.RANGES, "", WIDTH));
        lines.addAll(TextWrap.lines(StudyWords.CAUTION, "", WIDTH));
        return lines;
    }

    /** Leaves the small print to the page. */
    private static Table brief(Table table) {
        return new Table(
                table.caption(),
                table.heads(),
                table.rows().stream()
                        .map(row -> row.stream().map(it -> Cell.of(it.text())).toList())
                        .toList());
    }

    private static void add(List<String> lines, Table table) {
        if (!table.isEmpty()) {
            lines.add("");
            lines.addAll(TextWrap.lines(table.caption() + ":", "  ", WIDTH));
            lines.addAll(new TextTable(table).lines(WIDTH));
        }
    }
}
