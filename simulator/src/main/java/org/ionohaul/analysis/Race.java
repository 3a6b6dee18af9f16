package org.ionohaul.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.session.ProgressCurve;
import org.ionohaul.session.SessionResult;
import org.ionohaul.statistics.OrderedSample;
import org.ionohaul.study.CaseTrials;
import org.ionohaul.study.ModeTrials;
import org.ionohaul.study.SizeGrid;
import org.ionohaul.study.TrialRow;
import org.ionohaul.trial.SkyView;

/**
 * How many bytes the receiver of a case holds over time with each mode: on all trials, and on one.
 *
 * @param transfer what is sent
 * @param direction which way
 * @param lanes one entry a mode, in the scenario's order
 * @param trial number of the one trial: that on which the best mode takes its median time
 * @param sky its sky
 */
public record Race(Transfer transfer, Direction direction, List<Lane> lanes, long trial, SkyView sky) {
    /** Where sessions gave up is told of so many trials, the first ones. */
    public static final int STOPS_OF_TRIALS = 100;

    /** Copies the list. */
    public Race {
        lanes = List.copyOf(lanes);
    }

    /**
     * One mode in the race.
     *
     * @param mode the mode
     * @param marks when so many bytes are held, from the first byte, as 0 bytes, to the whole transfer; rising
     * @param stops where those of the first {@link #STOPS_OF_TRIALS} trials ended that did not deliver
     * @param one what the receiver held on the one trial
     * @param oneEndedSeconds when that session ended or, if it delivered, when it did
     * @param isOneDelivered whether it delivered
     */
    public record Lane(
            Mode mode,
            List<Mark> marks,
            List<Stop> stops,
            ProgressCurve one,
            double oneEndedSeconds,
            boolean isOneDelivered) {
        /** Copies the lists. */
        public Lane {
            marks = List.copyOf(marks);
            stops = List.copyOf(stops);
        }

        static Lane of(ModeTrials mode, Transfer transfer, SessionResult one) {
            List<Mark> marks = new ArrayList<>();
            marks.add(Mark.of(0, mode, TrialRow::firstByteSeconds));
            for (int i = 0; i < SizeGrid.indexNotBelow(transfer.totalBytes()); i++) {
                int size = i;
                marks.add(Mark.of(SizeGrid.BYTES.get(i), mode, row -> row.reachedSeconds(size)));
            }
            marks.add(Mark.of(transfer.totalBytes(), mode, TrialRow::deliveredSeconds));
            return new Lane(
                    mode.mode(),
                    marks,
                    mode.rows().stream()
                            .limit(STOPS_OF_TRIALS)
                            .filter(row -> row.deliveredNanos().isEmpty())
                            .map(row -> new Stop(row.endedNanos() / 1e9, row.bytesHeld()))
                            .toList(),
                    one.progress(),
                    one.deliveredNanos().orElse(one.endedNanos()) / 1e9,
                    one.deliveredNanos().isPresent());
        }
    }

    /**
     * When 1, 5 and 9 of 10 trials hold so many bytes, in seconds after pressing send; infinite if not so many ever do. Since
     * what is held only grows, this is also what 1, 5 and 9 of 10 hold at that time.
     */
    public record Mark(long bytes, double tenthSeconds, double medianSeconds, double ninthSeconds) {
        static Mark of(long bytes, ModeTrials mode, ToDoubleFunction<TrialRow> seconds) {
            OrderedSample reached =
                    OrderedSample.of(mode.rows().stream().mapToDouble(seconds).toArray());
            return new Mark(bytes, reached.quantile(0.1), reached.quantile(0.5), reached.quantile(0.9));
        }
    }

    /** Where a session ended that did not deliver: when, in seconds after pressing send, and with how many bytes held. */
    public record Stop(double seconds, long bytes) {}

    /**
     * Returns the race of a case.
     *
     * @param trials its trials, at least one
     * @param best index of the mode that ranks highest
     * @param seconds how long the one trial's sky is watched, positive
     * @param rerun where the one trial is run again
     */
    public static Race of(CaseTrials trials, int best, double seconds, Rerun rerun) {
        double[] times = trials.modes().get(best).completionSeconds();
        int[] slowestLast = IntStream.range(0, times.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> times[i]))
                .mapToInt(i -> i)
                .toArray();
        // The trial of the type-1 median, so that its line ends where the median's does.
        long trial = slowestLast[(times.length - 1) / 2];
        return new Race(
                trials.transfer(),
                trials.direction(),
                trials.modes().stream()
                        .map(mode -> Lane.of(
                                mode,
                                trials.transfer(),
                                rerun.session(trials.transfer(), trials.direction(), mode.mode(), trial)))
                        .toList(),
                trial,
                rerun.sky(trial, seconds));
    }
}
