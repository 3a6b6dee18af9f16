package org.ionohaul.analysis;

import java.util.List;
import java.util.stream.Stream;
import org.ionohaul.study.PlannedPoint;
import org.ionohaul.study.StudyResult;

/**
 * The points of a variation that are complete, in the order planned. The first is the reference that the others are
 * compared with; of its trials just the completion times are kept, of the others' nothing.
 */
public final class PointsDone {
    private final CompletionTimes reference;
    private final List<VariationPoint> points;

    private PointsDone(CompletionTimes reference, List<VariationPoint> points) {
        this.reference = reference;
        this.points = List.copyOf(points);
    }

    /** Returns the state before anything is done. */
    public static PointsDone none() {
        return new PointsDone(CompletionTimes.NONE, List.of());
    }

    /**
     * Returns these points and one more.
     *
     * @param plan what was changed for it
     * @param result the study it came to, with all its trials done
     */
    public PointsDone and(PlannedPoint plan, StudyResult result) {
        CompletionTimes first = points.isEmpty() ? CompletionTimes.of(result) : reference;
        VariationPoint more = VariationPoint.of(plan.values(), result, first);
        return new PointsDone(
                first, Stream.concat(points.stream(), Stream.of(more)).toList());
    }

    /** Returns the points. */
    public List<VariationPoint> points() {
        return points;
    }
}
