package org.ionohaul.whatif;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.rendering.ResultFolder;

/**
 * The scenario as it stands, then each key at either end, a line each case and mode, as {@link PointRows} writes them.
 */
public record TornadoCsv(Tornado tornado) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "tornado.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        PointRows rows = new PointRows(
                tornado.scenario(), tornado.bars().stream().map(TornadoBar::key).toList(), tornado.isPartial());
        List<List<Object>> lines = new ArrayList<>(rows.rows(List.of("", ""), tornado.reference()));
        for (TornadoBar bar : tornado.bars()) {
            lines.addAll(rows.rows(List.of(bar.key(), bar.low().values().get(0)), bar.low()));
            lines.addAll(rows.rows(List.of(bar.key(), bar.high().values().get(0)), bar.high()));
        }
        rows.write(List.of("key", "value"), lines, writer);
    }
}
