package org.ionohaul.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.trace.TraceStep.Kind;

/**
 * A session as a sequence of arrows between two stations: time runs down, each arrow from when its burst began at the one to
 * when it ended at the other, so that its slope is real time. Beside it how many bytes the receiver holds. Rows of overs that
 * change nothing are folded. Of a long session it shows a part that goes on a sheet of paper.
 *
 * @param story the session
 * @param fromNanos when what is shown begins
 * @param untilNanos when it ends; no burst is on the air at either
 */
record SequenceDiagram(TraceStory story, long fromNanos, long untilNanos) implements Picture {
    private static final int WIDE = 1040;
    /** A sheet of A4 or Letter has room for some 1,350, heads and the words above it counted. */
    private static final double MOST_ON_A_SHEET = 1100;

    private static final double MOST_PER_SECOND = 11;
    private static final double MOST_HEIGHT = 9000;
    private static final double HEAD = 5;

    /** Returns a session in parts, one after another. */
    static List<SequenceDiagram> partsOf(TraceStory story) {
        FoldedClock clock = clock(story, 0);
        List<SequenceDiagram> parts = new ArrayList<>();
        long from = 0;
        long quiet = 0;
        long heardUntil = 0;
        for (TraceStep step : story.steps()) {
            if (step.kind() == Kind.BURST) {
                if (step.atNanos() >= heardUntil && !clock.isFolded(step.atNanos())) {
                    if (clock.at(step.atNanos()) - clock.at(from) > MOST_ON_A_SHEET && quiet > from) {
                        parts.add(new SequenceDiagram(story, from, quiet));
                        from = quiet;
                    }
                    quiet = step.atNanos();
                }
                heardUntil = Math.max(heardUntil, step.untilNanos());
            }
        }
        parts.add(new SequenceDiagram(story, from, story.result().endedNanos()));
        return parts;
    }

    private static FoldedClock clock(TraceStory story, double top) {
        List<Fold> folds = Fold.of(story.steps());
        double shown = story.result().endedNanos() * 1e-9
                - folds.stream()
                        .mapToDouble(it -> (it.untilNanos() - it.fromNanos()) * 1e-9)
                        .sum();
        return new FoldedClock(folds, top, Math.min(MOST_PER_SECOND, MOST_HEIGHT / Math.max(1, shown)));
    }

    private boolean shows(long nanos) {
        return nanos >= fromNanos
                && (nanos < untilNanos || untilNanos == story.result().endedNanos());
    }

    private List<Fold> folds() {
        return Fold.of(story.steps()).stream()
                .filter(it -> shows(it.fromNanos()))
                .toList();
    }

    @Override
    public int wide() {
        return WIDE;
    }

    @Override
    public String svg(int width) {
        return new Drawing(this, width).svg();
    }

    private static final class Drawing {
        private final SequenceDiagram part;
        private final TraceStory story;
        private final List<Fold> folds;
        private final Svg svg;
        private final FoldedClock clock;
        private final double top;
        private final double bytesLeft;
        private final double bytesRight;
        private final double near;
        private final double far;
        private final double notes;
        private final double bottom;
        private final boolean isWide;

        Drawing(SequenceDiagram part, int width) {
            this.isWide = width > WIDE / 2;
            this.part = part;
            this.story = part.story();
            this.folds = part.folds();
            this.svg = new Svg(width, isWide ? 15 : 13);
            this.top = 5 * svg.lineHeight();
            this.clock = clock(story, top);
            this.bytesLeft = Math.max(3.4 * svg.size(), widestTick() + 8);
            this.bytesRight = bytesLeft + (isWide ? 130 : 40);
            this.near = bytesRight + (isWide ? 60 : 14);
            this.far = near + (isWide ? 330 : 90);
            this.notes = far + 12;
            this.bottom = at(part.untilNanos());
        }

        /** Returns the pixel of an instant. */
        private double at(long nanos) {
            return top + clock.at(nanos) - clock.at(part.fromNanos());
        }

        String svg() {
            heads();
            ticks();
            bytes();
            folds.forEach(this::fold);
            steps().filter(it -> it.kind() == Kind.BURST).forEach(this::arrow);
            return svg.finished(Math.max(bottom, words()) + svg.lineHeight());
        }

        /** Returns what happens outside of folds. */
        private Stream<TraceStep> steps() {
            return story.steps().stream()
                    .filter(it -> part.shows(it.atNanos()))
                    .filter(it -> folds.stream().noneMatch(fold -> fold.holds(it)));
        }

        private void heads() {
            name(End.NEAR, near, bytesRight + 2, (near + far) / 2 - 3);
            name(End.FAR, far, (near + far) / 2 + 3, svg.width());
            double y = 4.2 * svg.lineHeight();
            svg.text(
                    Svg.FAINT,
                    Svg.Anchor.START,
                    0,
                    y,
                    svg.smallSize(),
                    "held, to " + SizeText.size(story.transfer().totalBytes()));
            svg.line("line", near, top, near, bottom);
            svg.line("line", far, top, far, bottom);
        }

        private void name(End end, double x, double low, double high) {
            List<String> lines = Lettering.lines(
                    story.scenario().station(end).name(), svg.size(), Math.max(40, 2 * Math.min(x - low, high - x)));
            for (int i = 0; i < Math.min(3, lines.size()); i++) {
                svg.text(Svg.BOLD, Svg.Anchor.MIDDLE, x, (i + 1) * svg.lineHeight(), svg.size(), lines.get(i));
            }
        }

        private int stepSeconds() {
            return clock.perSecond() > 4 ? 10 : 60;
        }

        /** Of all parts, so that they are drawn alike. */
        private double widestTick() {
            return IntStream.rangeClosed(0, (int) (story.result().endedNanos() * 1e-9 / stepSeconds()))
                    .mapToDouble(it -> Lettering.width(TimeText.length(it * stepSeconds()), svg.smallSize()))
                    .max()
                    .orElse(0);
        }

        private void ticks() {
            long step = stepSeconds() * 1_000_000_000L;
            double free = 0;
            for (long at = (part.fromNanos() + step - 1) / step * step; at <= part.untilNanos(); at += step) {
                double y = at(at);
                if (!clock.isFolded(at) && y >= free) {
                    svg.line("rule", bytesLeft, y, far, y);
                    svg.text(
                            Svg.FAINT,
                            Svg.Anchor.END,
                            bytesLeft - 4,
                            y + 0.35 * svg.smallSize(),
                            svg.smallSize(),
                            TimeText.length(at * 1e-9));
                    free = y + svg.lineHeight();
                }
            }
        }

        private void bytes() {
            double whole = story.transfer().totalBytes();
            ProgressCurve progress = story.result().progress();
            double x = bytesLeft;
            int next = 0;
            for (; next < progress.size() && progress.atNanos(next) < part.fromNanos(); next++) {
                x = bytesLeft + (bytesRight - bytesLeft) * progress.heldBytes(next) / whole;
            }
            Path path = new Path().from(new Point(x, top));
            for (; next < progress.size() && part.shows(progress.atNanos(next)); next++) {
                double y = at(progress.atNanos(next));
                path.to(new Point(x, y));
                x = bytesLeft + (bytesRight - bytesLeft) * progress.heldBytes(next) / whole;
                path.to(new Point(x, y));
            }
            svg.path("line", path.to(new Point(x, bottom)));
            svg.line("rule", bytesRight, top, bytesRight, bottom);
        }

        private void fold(Fold fold) {
            svg.rectangle("open", near, at(fold.fromNanos()) + 3, far - near, FoldedClock.FOLD - 6, "");
        }

        private void arrow(TraceStep step) {
            boolean isFromNear = step.at() == End.NEAR;
            Point from = new Point(isFromNear ? near : far, at(step.atNanos()));
            Point to = new Point(isFromNear ? far : near, at(step.untilNanos()));
            String style = step.dataRate() > 0 ? "whisker" : "line";
            if (step.isHeard()) {
                svg.path(style, new Path().from(from).to(to), step.says());
                double back = isFromNear ? -HEAD : HEAD;
                svg.path(
                        style,
                        new Path()
                                .from(new Point(to.x() + 1.6 * back, to.y() - HEAD))
                                .to(to)
                                .to(new Point(to.x() + 1.6 * back, to.y() + 0.4 * HEAD)));
            } else {
                Point end = new Point((from.x() + 2 * to.x()) / 3, (from.y() + 2 * to.y()) / 3);
                svg.path(style, new Path().from(from).to(end), step.says() + ", lost");
                svg.path("lost", Svg.cross(new Path(), end.x(), end.y(), HEAD));
            }
        }

        /** A line of words. */
        private record Note(long atNanos, String says, boolean isStage) {}

        /** Words stand beside what they tell of, or below the words before; returns where they end. */
        private double words() {
            List<Note> told = new ArrayList<>();
            folds.forEach(it -> told.add(new Note((it.fromNanos() + it.untilNanos()) / 2, it.says(), false)));
            steps().filter(Drawing::isTold)
                    .forEach(it -> told.add(new Note(
                            it.kind() == Kind.BURST ? it.untilNanos() : it.atNanos(),
                            says(it),
                            it.kind() == Kind.STAGE)));
            told.sort(Comparator.comparingLong(Note::atNanos));
            double free = top;
            for (Note note : told) {
                double wanted = at(note.atNanos());
                double y = Math.max(wanted, free);
                svg.line("rule", far, wanted, notes - 2, y);
                for (String line : Lettering.lines(note.says(), svg.smallSize(), svg.width() - notes)) {
                    svg.text(
                            note.isStage() ? "" : Svg.FAINT,
                            Svg.Anchor.START,
                            notes,
                            y + 0.35 * svg.smallSize(),
                            svg.smallSize(),
                            line);
                    y += svg.lineHeight();
                }
                free = y;
            }
            return free;
        }

        /** What was heard needs no words but for overs, which say what was decoded. */
        private static boolean isTold(TraceStep step) {
            return step.kind() == Kind.BURST
                    ? step.dataRate() > 0 || !step.isHeard() || !step.says().startsWith("acknowledgement")
                    : step.kind() != Kind.SILENCE && !step.says().startsWith("stays");
        }

        private String says(TraceStep step) {
            if (step.kind() != Kind.BURST) {
                return step.kind() == Kind.DATA_RATE
                        ? "data rate " + (isWide ? step.says() : step.says().replaceFirst(":.*", ""))
                        : story.scenario().station(step.at()).name() + ": " + step.says();
            }
            if (step.dataRate() == 0) {
                return step.says().replaceFirst(",.*", "") + (step.isHeard() ? "" : ": not heard");
            }
            String again = step.framesAgain() > 0 ? " (" + step.framesAgain() + " again)" : "";
            return String.format(
                    Locale.ROOT,
                    "rate %d: %d of %d frames%s",
                    step.dataRate(),
                    step.framesDecoded(),
                    step.frames(),
                    again);
        }
    }
}
