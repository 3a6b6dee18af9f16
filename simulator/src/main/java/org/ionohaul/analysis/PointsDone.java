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
    private final int planned;
    private final CompletionTimes reference;
    private final List<VariationPoint> points;

    private PointsDone(int planned, CompletionTimes reference, List<VariationPoint> points) {
        this.planned = planned;
        this.reference = reference;
        this.points = List.copyOf(points);
    }

    /**
     * Returns the state before anything is done.
     *
     * @param planned how many points are to be done, 1 or more: the more, the surer each must be
     */
    public static PointsDone noneOf(int planned) {
        return new PointsDone(planned, CompletionTimes.NONE, List.of());
    }

    /**
     * Returns these points and one more.
     *
     * @param plan what was changed for it
     * @param result the study it came to, with all its trials done
     */
    public PointsDone and(PlannedPoint plan, StudyResult result) {
        CompletionTimes first = points.isEmpty() ? CompletionTimes.of(result) : reference;
        VariationPoint more = VariationPoint.of(plan.values(), result, first, planned);
        return new PointsDone(
                planned, first, Stream.concat(points.stream(), Stream.of(more)).toList());
    }

    /** Returns the points. */
    public List<VariationPoint> points() {
        return points;
    }
}
