package org.ionohaul.trace;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.CauseLegend;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.Cause;
import org.ionohaul.trace.TraceStep.Kind;

/**
 * A session's story as a picture: time runs down the page. From left to right the clock, the SINR at both ends, what the
 * time went to, and the ladder: each burst a bar from one station's life line towards the other's, whole if it was
 * understood there, half if not; overs coloured by data rate. Beside it what was decided and why.
 */
public record LadderDiagram(TraceStory story) implements ResultFolder.Text {
    private static final double WIDTH = 940;
    private static final double TOP = 114;
    private static final double CLOCK = 56;
    private static final double SINR_LEFT = 66;
    private static final double SINR_WIDTH = 150;
    private static final double LOWEST_DB = -10;
    private static final double HIGHEST_DB = 35;
    private static final double BUDGET_LEFT = 232;
    private static final double BUDGET_WIDTH = 14;
    private static final double NEAR = 268;
    private static final double FAR = 468;
    private static final double NOTES = 482;
    private static final double NOTE_ROW = 14;
    private static final double MOST_HEIGHT = 12_000;
    private static final double MOST_PER_SECOND = 9;
    private static final int SINR_POINTS_A_SECOND = 2;

    @Override
    public String fileName() {
        return "ladder.svg";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        writer.write(svg().replaceFirst("<svg ", size()) + "\n");
    }

    /** A picture that stands alone needs a size of its own, or a browser squeezes it into the window. */
    private String size() {
        return "<svg width=\"" + Svg.number(WIDTH) + "\" height=\"" + Svg.number(height()) + "\" ";
    }

    /** Returns the picture. */
    String svg() {
        double seconds = seconds();
        double perSecond = perSecond();
        Svg svg = new Svg(
                WIDTH,
                height(),
                story.title(),
                "Time runs down. Bars between two lines are bursts of the two stations. The same story stands in words in"
                        + " story.txt.");
        drawHead(svg);
        drawClock(svg, seconds, perSecond);
        drawSinr(svg, End.NEAR, seconds, perSecond);
        drawSinr(svg, End.FAR, seconds, perSecond);
        story.recorder().spans().forEach(span -> drawSpan(svg, span, perSecond));
        story.steps().stream()
                .filter(step -> step.kind() == Kind.BURST)
                .forEach(step -> drawBurst(svg, step, perSecond));
        drawNotes(svg, perSecond);
        return svg.finished();
    }

    private double seconds() {
        return story.result().endedNanos() * 1e-9;
    }

    private double perSecond() {
        return Math.min(MOST_PER_SECOND, MOST_HEIGHT / Math.max(1, seconds()));
    }

    private double height() {
        return TOP + seconds() * perSecond() + 5 * NOTE_ROW;
    }

    private void drawHead(Svg svg) {
        svg.boldText(6, 18, Svg.Anchor.START, Palette.INK, story.title());
        svg.text(6, 36, Svg.Anchor.START, Palette.INK, story.ending());
        svg.text(SINR_LEFT, 66, Svg.Anchor.START, colour(End.NEAR), "SINR at near");
        svg.text(SINR_LEFT, 80, Svg.Anchor.START, colour(End.FAR), "at far (dashed), dB");
        svg.boldText(NEAR, 104, Svg.Anchor.MIDDLE, Palette.INK, "near");
        svg.boldText(FAR, 104, Svg.Anchor.MIDDLE, Palette.INK, "far");
        drawLegend(svg);
        for (double dataRate = LOWEST_DB + 10; dataRate < HIGHEST_DB; dataRate += 10) {
            svg.text(sinrX(dataRate), 100, Svg.Anchor.MIDDLE, Palette.FAINT, Svg.number(dataRate));
        }
    }

    private static void drawLegend(Svg svg) {
        double x = NOTES + 20;
        double y = 48;
        for (Cause cause : Cause.values()) {
            svg.rectangle(
                    x,
                    y,
                    10,
                    10,
                    CauseLegend.of(cause).colour(),
                    CauseLegend.of(cause).name());
            svg.text(
                    x + 14,
                    y + 10,
                    Svg.Anchor.START,
                    Palette.INK,
                    CauseLegend.of(cause).name());
            boolean isRowFull = x > NOTES + 220;
            x = isRowFull ? NOTES + 20 : x + 130;
            y += isRowFull ? 14 : 0;
        }
    }

    private static void drawClock(Svg svg, double seconds, double perSecond) {
        double step = perSecond > 4 ? 10 : 60;
        for (double at = 0; at <= seconds; at += step) {
            double y = TOP + at * perSecond;
            svg.line(CLOCK + 4, y, FAR, y, Palette.RULE, 0.5);
            svg.text(CLOCK, y + 4, Svg.Anchor.END, Palette.FAINT, TimeText.clock(at));
        }
        double bottom = TOP + seconds * perSecond;
        svg.line(NEAR, TOP, NEAR, bottom, Palette.INK, 1.5);
        svg.line(FAR, TOP, FAR, bottom, Palette.INK, 1.5);
    }

    private void drawSinr(Svg svg, End end, double seconds, double perSecond) {
        SvgPath path = new SvgPath();
        int points = (int) Math.ceil(seconds * SINR_POINTS_A_SECOND);
        long stepNanos = 1_000_000_000L / SINR_POINTS_A_SECOND;
        for (int point = 0; point < points; point++) {
            double dataRate = story.recorder().gauge().meanDb(end, point * stepNanos, (point + 1) * stepNanos);
            path.to(sinrX(dataRate), TOP + (point + 0.5) * perSecond / SINR_POINTS_A_SECOND);
        }
        svg.stroke(path, colour(end), 1, end == End.NEAR ? "none" : "3 2");
    }

    private static double sinrX(double dataRateDb) {
        double clipped = Math.max(LOWEST_DB, Math.min(dataRateDb, HIGHEST_DB));
        return SINR_LEFT + SINR_WIDTH * (clipped - LOWEST_DB) / (HIGHEST_DB - LOWEST_DB);
    }

    private static void drawSpan(Svg svg, TraceSpan span, double perSecond) {
        double top = TOP + span.fromNanos() * 1e-9 * perSecond;
        double height = (span.untilNanos() - span.fromNanos()) * 1e-9 * perSecond;
        svg.rectangle(
                BUDGET_LEFT,
                top,
                BUDGET_WIDTH,
                height,
                CauseLegend.of(span.cause()).colour(),
                CauseLegend.of(span.cause()).name());
    }

    private void drawBurst(Svg svg, TraceStep step, double perSecond) {
        double top = TOP + step.atNanos() * 1e-9 * perSecond;
        double height = Math.max(1.5, (step.untilNanos() - step.atNanos()) * 1e-9 * perSecond);
        double length = (FAR - NEAR - 4) * (step.isHeard() ? 1 : 0.5);
        double left = step.at() == End.NEAR ? NEAR + 2 : FAR - 2 - length;
        svg.rectangle(left, top, length, height, colour(step), step.says() + (step.isHeard() ? "" : ", lost"));
        if (!step.isHeard()) {
            double end = step.at() == End.NEAR ? left + length : left;
            svg.line(end - 4, top, end + 4, top + height, Palette.ALERT, 1.5);
            svg.line(end - 4, top + height, end + 4, top, Palette.ALERT, 1.5);
        }
        if (height > 11 && step.dataRate() > 0) {
            String ink = Palette.isDark(step.dataRate() - 1, dataRates()) ? Palette.PAPER : Palette.INK;
            String fate = String.format(
                    Locale.ROOT, "data rate %d: %d of %d", step.dataRate(), step.framesDecoded(), step.frames());
            svg.text(left + length / 2, top + height / 2 + 4, Svg.Anchor.MIDDLE, ink, fate);
        }
    }

    private void drawNotes(Svg svg, double perSecond) {
        double free = TOP;
        for (TraceStep step : notable()) {
            double wanted = TOP + step.atNanos() * 1e-9 * perSecond + 4;
            double y = Math.max(wanted, free);
            String who = step.kind() == Kind.DATA_RATE
                    ? "data rate "
                    : step.at().name().toLowerCase(Locale.ROOT) + ": ";
            svg.line(FAR + 2, wanted - 4, NOTES - 3, y - 4, Palette.RULE, 0.7);
            svg.text(
                    NOTES,
                    y,
                    Svg.Anchor.START,
                    step.kind() == Kind.STAGE ? Palette.INK : Palette.FAINT,
                    who + step.says());
            free = y + NOTE_ROW;
        }
    }

    private List<TraceStep> notable() {
        return story.steps().stream()
                .filter(step -> step.kind() != Kind.BURST && step.kind() != Kind.SILENCE)
                .filter(step -> !step.says().startsWith("stays"))
                .toList();
    }

    private int dataRates() {
        return story.mode().dataRates().size();
    }

    private String colour(TraceStep step) {
        return step.dataRate() > 0 ? Palette.rung(step.dataRate() - 1, dataRates()) : Palette.FAINT;
    }

    private static String colour(End end) {
        return Palette.colour(end == End.NEAR ? 0 : 1);
    }
}
