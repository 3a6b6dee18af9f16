package org.ionohaul.report;

import java.util.List;
import java.util.stream.IntStream;
import org.ionohaul.picture.Legend;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Svg;

/**
 * Lying bars, one a mode, each cut into parts. Failures stand apart at the end.
 *
 * @param parts the parts
 * @param bars the bars
 */
record StackedBars(List<Part> parts, List<Bar> bars) implements Picture {
    private static final double HEIGHT = 26;
    private static final double APART = 8;

    /**
     * What a part of a bar means.
     *
     * @param name in words
     * @param style how it looks
     * @param isFailure whether it stands apart
     */
    record Part(String name, String style, boolean isFailure) {}

    /**
     * One bar.
     *
     * @param mode what people call the mode
     * @param remark what to say beside the name
     * @param amounts length of each part, as a share of the whole width, in the order of the parts
     * @param labels what each part's amount is in words
     */
    record Bar(String mode, String remark, List<Double> amounts, List<String> labels) {}

    @Override
    public String svg(int width) {
        Svg svg = new Svg(width);
        double y = 0;
        for (Bar bar : bars) {
            String remark = bar.remark().isEmpty() ? "" : ": " + bar.remark();
            y = svg.paragraph("", 0, y, width, bar.mode() + remark) + 2;
            draw(svg, bar, y);
            y += HEIGHT + svg.size() / 2;
        }
        return svg.finished(Legend.draw(svg, y, keys()));
    }

    private void draw(Svg svg, Bar bar, double y) {
        double room = svg.width() - (parts.stream().anyMatch(Part::isFailure) ? APART : 0);
        double x = 0;
        boolean isApart = false;
        for (int i = 0; i < bar.amounts().size(); i++) {
            Part part = parts.get(i);
            if (part.isFailure() && !isApart) {
                isApart = true;
                x += APART;
            }
            double wide = room * bar.amounts().get(i);
            if (wide > 0) {
                String label = bar.labels().get(i);
                svg.rectangle(
                        "part " + part.style(), x, y, wide, HEIGHT, bar.mode() + "\n" + part.name() + ": " + label);
                svg.textInside("on " + part.style(), x, y, wide, HEIGHT, label);
                x += wide;
            }
        }
    }

    private List<Legend.Key> keys() {
        return IntStream.range(0, parts.size())
                .filter(i -> bars.stream()
                        .anyMatch(it -> i < it.amounts().size() && it.amounts().get(i) > 0))
                .mapToObj(parts::get)
                .map(it -> new Legend.Key(Legend.Sign.BOX, "part " + it.style(), it.name()))
                .toList();
    }
}
