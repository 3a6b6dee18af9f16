package org.ionohaul.trace;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.trace.TraceStep.Kind;

/**
 * A stretch of a session in which nothing changed: overs at one data rate, one after another, of each at least a frame decoded and its
 * acknowledgement heard. The first and the last of such a row are not part of the stretch, so that they are seen.
 *
 * @param fromNanos when it began
 * @param untilNanos when it ended
 * @param overs how many overs it holds
 * @param dataRate their data rate, counted from 1
 * @param frames how many frames they sent
 * @param framesDecoded how many of these were decoded
 */
record Fold(long fromNanos, long untilNanos, int overs, int dataRate, int frames, int framesDecoded) {
    /** Fewer are shown as they are. */
    private static final int FEWEST = 2;

    /** An over and its acknowledgement. */
    private record Exchange(TraceStep over, TraceStep answer) {}

    /** Returns all such stretches, in order of time. */
    static List<Fold> of(List<TraceStep> steps) {
        List<Fold> folds = new ArrayList<>();
        List<Exchange> row = new ArrayList<>();
        List<TraceStep> telling = steps.stream()
                .filter(it -> it.kind() != Kind.DATA_RATE || !it.says().startsWith("stays"))
                .toList();
        for (int i = 0; i < telling.size(); i++) {
            boolean isCalm = i + 1 < telling.size() && isOver(telling.get(i)) && isAnswer(telling.get(i + 1));
            int rate = telling.get(i).dataRate();
            if (!isCalm || (!row.isEmpty() && row.get(0).over().dataRate() != rate)) {
                close(row, folds);
            }
            if (isCalm) {
                row.add(new Exchange(telling.get(i), telling.get(i + 1)));
                i++;
            }
        }
        close(row, folds);
        return folds;
    }

    private static boolean isOver(TraceStep step) {
        return step.kind() == Kind.BURST && step.dataRate() > 0 && step.isHeard();
    }

    private static boolean isAnswer(TraceStep step) {
        return step.kind() == Kind.BURST && step.isHeard() && step.says().startsWith("acknowledgement");
    }

    private static void close(List<Exchange> row, List<Fold> folds) {
        int inner = row.size() - 2;
        if (inner >= FEWEST) {
            List<Exchange> unseen = row.subList(1, inner + 1);
            folds.add(new Fold(
                    unseen.get(0).over().atNanos(),
                    unseen.get(inner - 1).answer().untilNanos(),
                    inner,
                    unseen.get(0).over().dataRate(),
                    unseen.stream().mapToInt(it -> it.over().frames()).sum(),
                    unseen.stream().mapToInt(it -> it.over().framesDecoded()).sum()));
        }
        row.clear();
    }

    /** Returns whether a step lies in it. */
    boolean holds(TraceStep step) {
        return step.atNanos() >= fromNanos && step.untilNanos() <= untilNanos;
    }

    /** Returns what it says. */
    String says() {
        return overs + " more at data rate " + dataRate + ": " + framesDecoded + " of " + frames + " frames, in "
                + TimeText.length((untilNanos - fromNanos) * 1e-9);
    }
}
