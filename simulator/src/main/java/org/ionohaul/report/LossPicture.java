package org.ionohaul.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.DoubleStream;
import org.ionohaul.trial.ModeCard;

/**
 * A mode's frame loss against SNR as a picture: a panel a path, a line a level, light for the most robust and dark for the
 * fastest. The losses go by decades downwards, so that one frame in a hundred can be told from one in ten.
 */
public record LossPicture(ModeCard card) implements ResultFolder.Entry {
    private static final double WIDTH = 720;
    private static final double LEFT = 64;
    private static final double RIGHT = 16;
    private static final double PANEL = 170;
    private static final double GAP = 58;
    private static final double TOP = 34;
    private static final double LEAST_LOSS = 1e-3;
    private static final int STEP_DB = 5;

    @Override
    public String fileName() {
        return "loss.svg";
    }

    @Override
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, svg());
    }

    private String svg() {
        int panels = card.levels().get(0).paths().size();
        Svg svg = new Svg(
                "loss",
                WIDTH,
                TOP + panels * (PANEL + GAP),
                card.mode().title() + ": frames lost",
                "For each path and speed level the share of frames lost over the SNR in 3 kHz; the numbers are in loss.csv.");
        for (int panel = 0; panel < panels; panel++) {
            drawPanel(svg, panel);
        }
        return svg.finished();
    }

    private void drawPanel(Svg svg, int panel) {
        double top = TOP + panel * (PANEL + GAP);
        String path = card.levels().get(0).paths().get(panel).path().key();
        svg.boldText(LEFT, top - 10, Svg.Anchor.START, Palette.INK, "Frames lost, path: " + path);
        for (double loss = 1; loss > LEAST_LOSS / 2; loss /= 10) {
            double y = top + y(loss);
            svg.line(LEFT, y, WIDTH - RIGHT, y, Palette.RULE, 1, "none");
            svg.text(LEFT - 6, y + 4, Svg.Anchor.END, Palette.FAINT, percent(loss));
        }
        for (int db = lowestDb(); db <= highestDb(); db += STEP_DB) {
            svg.line(x(db), top, x(db), top + PANEL, Palette.RULE, 1, "none");
            svg.text(x(db), top + PANEL + 16, Svg.Anchor.MIDDLE, Palette.FAINT, String.valueOf(db));
        }
        svg.text(WIDTH - RIGHT, top + PANEL + 32, Svg.Anchor.END, Palette.FAINT, "SNR in 3 kHz, dB");
        int levels = card.levels().size();
        for (int level = 0; level < levels; level++) {
            drawCurve(svg, top, card.levels().get(level).paths().get(panel), level, levels);
        }
    }

    private void drawCurve(Svg svg, double top, ModeCard.OnPath path, int level, int levels) {
        if (path.curve().isEmpty()) {
            return;
        }
        SvgPath line = new SvgPath();
        for (ModeCard.LossPoint point : path.curve()) {
            line.to(x(point.snrDb()), top + y(point.loss()));
            if (point.loss() <= LEAST_LOSS) {
                break;
            }
        }
        String colour = Palette.rung(level, levels);
        svg.stroke(line, colour, 1.8, Palette.dash(level));
        if (Double.isFinite(path.tenthLostDb())) {
            double y = top + y(0.1) - 4 - 11 * (level % 2);
            svg.text(x(path.tenthLostDb()) + 4, y, Svg.Anchor.START, Palette.INK, String.valueOf(level + 1));
        }
    }

    private static String percent(double loss) {
        return Svg.number(100 * loss) + " %";
    }

    private static double y(double loss) {
        return PANEL * Math.log10(Math.max(LEAST_LOSS, loss)) / Math.log10(LEAST_LOSS);
    }

    private double x(double snrDb) {
        return LEFT + (WIDTH - LEFT - RIGHT) * (snrDb - lowestDb()) / (highestDb() - lowestDb());
    }

    private int lowestDb() {
        return STEP_DB * (int) Math.floor(snrsDb().min().orElse(0) / STEP_DB);
    }

    private int highestDb() {
        return STEP_DB * (int) Math.ceil(snrsDb().max().orElse(1) / STEP_DB);
    }

    private DoubleStream snrsDb() {
        return card.levels().stream()
                .map(ModeCard.Level::paths)
                .flatMap(List::stream)
                .map(ModeCard.OnPath::curve)
                .flatMap(List::stream)
                .mapToDouble(ModeCard.LossPoint::snrDb);
    }
}
