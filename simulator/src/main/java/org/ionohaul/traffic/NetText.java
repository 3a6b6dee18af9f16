package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TextTable;
import org.ionohaul.rendering.TextWrap;

/** What is found of a net, for a terminal. */
public record NetText(NetFindings findings) {
    private static final int WIDTH = 80;

    /** Returns the lines. */
    public List<String> lines() {
        NetWords words = new NetWords(findings);
        NetTables tables = new NetTables(findings);
        List<String> lines = new ArrayList<>(TextWrap.lines(findings.scenario().title(), "", WIDTH));
        lines.addAll(TextWrap.lines(words.basis(), "", WIDTH));
        lines.add("");
        words.sentences().forEach(it -> lines.addAll(TextWrap.lines(it, "  ", WIDTH)));
        add(lines, tables.kinds());
        add(lines, tables.parts());
        lines.add("");
        lines.addAll(TextWrap.lines(NetWords.RANGES, "", WIDTH));
        return lines;
    }

    private static void add(List<String> lines, Table table) {
        lines.add("");
        lines.addAll(TextWrap.lines(table.caption() + ":", "  ", WIDTH));
        lines.addAll(new TextTable(table).lines(WIDTH));
    }
}
