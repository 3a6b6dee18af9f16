package org.ionohaul.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.ionohaul.channel.End;
import org.ionohaul.picture.Lettering;
import org.ionohaul.picture.Path;
import org.ionohaul.picture.Picture;
import org.ionohaul.picture.Point;
import org.ionohaul.picture.Svg;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.trace.TraceStep.Kind;

/**
 * A session as a sequence of arrows between two stations: time runs down, each arrow from when its burst began at the one to
 * when it ended at the other, so that its slope is real time. Beside it how many bytes the receiver holds. Rows of overs that
 * change nothing are folded.
 *
 * @param story the session
 */
record SequenceDiagram(TraceStory story) implements Picture {
    private static final int WIDE = 1040;
    private static final double MOST_PER_SECOND = 11;
    private static final double MOST_HEIGHT = 9000;
    private static final double HEAD = 5;

    @Override
    public int wide() {
        return WIDE;
    }

    @Override
    public String svg(int width) {
        return new Drawing(story, width).svg();
    }

    private static final class Drawing {
        private final TraceStory story;
        private final Svg svg;
        private final FoldedClock clock;
        private final double bytesLeft;
        private final double bytesRight;
        private final double near;
        private final double far;
        private final double notes;
        private final double bottom;
        private final boolean isWide;

        Drawing(TraceStory story, int width) {
            this.isWide = width > WIDE / 2;
            this.story = story;
            this.svg = new Svg(width, isWide ? 15 : 13);
            String longest = TimeText.compact(story.result().endedNanos() * 1e-9);
            this.bytesLeft = Math.max(3.4 * svg.size(), Lettering.width(longest, svg.smallSize()) + 8);
            this.bytesRight = bytesLeft + (isWide ? 130 : 40);
            this.near = bytesRight + (isWide ? 60 : 14);
            this.far = near + (isWide ? 330 : 90);
            this.notes = far + 12;
            List<Fold> folds = Fold.of(story.steps());
            double shown = story.result().endedNanos() * 1e-9
                    - folds.stream()
                            .mapToDouble(it -> (it.untilNanos() - it.fromNanos()) * 1e-9)
                            .sum();
            this.clock = new FoldedClock(
                    folds, 5 * svg.lineHeight(), Math.min(MOST_PER_SECOND, MOST_HEIGHT / Math.max(1, shown)));
            this.bottom = clock.at(story.result().endedNanos());
        }

        String svg() {
            heads();
            ticks();
            bytes();
            clock.folds().forEach(this::fold);
            story.steps().stream()
                    .filter(it -> it.kind() == Kind.BURST)
                    .filter(it -> clock.folds().stream().noneMatch(fold -> fold.holds(it)))
                    .forEach(this::arrow);
            return svg.finished(Math.max(bottom, words()) + svg.lineHeight());
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
            svg.line("line", near, clock.top(), near, bottom);
            svg.line("line", far, clock.top(), far, bottom);
        }

        private void name(End end, double x, double low, double high) {
            List<String> lines = Lettering.lines(
                    story.scenario().station(end).name(), svg.size(), Math.max(40, 2 * Math.min(x - low, high - x)));
            for (int i = 0; i < Math.min(3, lines.size()); i++) {
                svg.text(Svg.BOLD, Svg.Anchor.MIDDLE, x, (i + 1) * svg.lineHeight(), svg.size(), lines.get(i));
            }
        }

        private void ticks() {
            long step = (clock.perSecond() > 4 ? 10 : 60) * 1_000_000_000L;
            double free = 0;
            for (long at = 0; at <= story.result().endedNanos(); at += step) {
                double y = clock.at(at);
                if (!clock.isFolded(at) && y >= free) {
                    svg.line("rule", bytesLeft, y, far, y);
                    svg.text(
                            Svg.FAINT,
                            Svg.Anchor.END,
                            bytesLeft - 4,
                            y + 0.35 * svg.smallSize(),
                            svg.smallSize(),
                            TimeText.compact(at * 1e-9));
                    free = y + svg.lineHeight();
                }
            }
        }

        private void bytes() {
            double whole = story.transfer().totalBytes();
            Path path = new Path().from(new Point(bytesLeft, clock.top()));
            double x = bytesLeft;
            for (int i = 0; i < story.result().progress().size(); i++) {
                double y = clock.at(story.result().progress().atNanos(i));
                path.to(new Point(x, y));
                x = bytesLeft
                        + (bytesRight - bytesLeft) * story.result().progress().heldBytes(i) / whole;
                path.to(new Point(x, y));
            }
            svg.path("line", path.to(new Point(x, bottom)));
            svg.line("rule", bytesRight, clock.top(), bytesRight, bottom);
        }

        private void fold(Fold fold) {
            double top = clock.at(fold.fromNanos());
            svg.rectangle("open", near, top + 3, far - near, FoldedClock.FOLD - 6, "");
        }

        private void arrow(TraceStep step) {
            boolean isFromNear = step.at() == End.NEAR;
            Point from = new Point(isFromNear ? near : far, clock.at(step.atNanos()));
            Point to = new Point(isFromNear ? far : near, clock.at(step.untilNanos()));
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
            clock.folds().forEach(it -> told.add(new Note((it.fromNanos() + it.untilNanos()) / 2, it.says(), false)));
            story.steps().stream()
                    .filter(it -> clock.folds().stream().noneMatch(fold -> fold.holds(it)))
                    .filter(Drawing::isTold)
                    .forEach(it -> told.add(new Note(
                            it.kind() == Kind.BURST ? it.untilNanos() : it.atNanos(),
                            says(it),
                            it.kind() == Kind.STAGE)));
            told.sort(Comparator.comparingLong(Note::atNanos));
            double free = clock.top();
            for (Note note : told) {
                double wanted = clock.at(note.atNanos());
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
