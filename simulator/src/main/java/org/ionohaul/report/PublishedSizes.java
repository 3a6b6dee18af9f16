package org.ionohaul.report;

import java.util.List;
import org.ionohaul.analysis.Pace;
import org.ionohaul.analysis.SizeAnswers;
import org.ionohaul.analysis.SizeComparison;
import org.ionohaul.analysis.SizeCurve;
import org.ionohaul.analysis.SizePoint;
import org.ionohaul.scenario.Direction;
import org.ionohaul.statistics.Estimate;

/** Answers for files of every size in one direction, as {@code summary.json} has them. */
record PublishedSizes(Direction direction, int trials, List<Curve> curves, List<Pair> pairs, List<Crossing> crossings) {
    /** One mode over all sizes. */
    record Curve(String mode, Pace pace, List<Point> points) {
        static Curve of(SizeCurve curve) {
            return new Curve(
                    curve.mode().name(),
                    curve.pace(),
                    curve.points().stream().map(Point::of).toList());
        }
    }

    /** One size. */
    record Point(
            long sizeBytes,
            boolean sent,
            Estimate tenthSeconds,
            Estimate medianSeconds,
            Estimate ninthSeconds,
            Estimate reachedShare) {
        static Point of(SizePoint point) {
            return new Point(
                    point.bytes(),
                    point.isSent(),
                    point.tenthSeconds(),
                    point.medianSeconds(),
                    point.ninthSeconds(),
                    point.reached());
        }
    }

    /** Which of two modes is first, as far as it is beyond chance. */
    record Pair(String first, String second, List<Ahead> ahead) {
        static Pair of(SizeComparison pair) {
            return new Pair(
                    pair.first(),
                    pair.second(),
                    pair.proven().stream()
                            .map(it -> new Ahead(it.mode(), it.fromBytes(), it.toBytes()))
                            .toList());
        }
    }

    /** Sizes with which one of a pair comes first more often. */
    record Ahead(String mode, long fromBytes, long toBytes) {}

    /** The size at which one mode overtakes another. */
    record Crossing(String firstBelow, String firstAbove, Estimate crossingBytes) {
        static Crossing of(org.ionohaul.analysis.Crossing crossing) {
            return new Crossing(crossing.firstBelow(), crossing.firstAbove(), crossing.bytes());
        }
    }

    static PublishedSizes of(SizeAnswers answers) {
        return new PublishedSizes(
                answers.direction(),
                answers.trials(),
                answers.curves().stream().map(Curve::of).toList(),
                answers.pairs().stream().map(Pair::of).toList(),
                answers.pairs().stream()
                        .flatMap(it -> it.crossings().stream())
                        .map(Crossing::of)
                        .toList());
    }
}
