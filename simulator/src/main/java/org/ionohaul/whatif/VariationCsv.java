package org.ionohaul.whatif;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.Variation;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.study.KeySweep;

/** Every point of a variation, a line each case and mode, as {@link PointRows} writes them. */
public record VariationCsv(Variation variation) implements ResultFolder.Text {
    @Override
    public String fileName() {
        return "vary.csv";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        List<String> keys = variation.sweeps().stream().map(KeySweep::key).toList();
        PointRows rows = new PointRows(variation.scenario(), keys, variation.isPartial());
        List<List<Object>> lines = new ArrayList<>();
        for (VariationPoint point : variation.points()) {
            lines.addAll(rows.rows(point.values(), point));
        }
        rows.write(keys, lines, writer);
    }
}
