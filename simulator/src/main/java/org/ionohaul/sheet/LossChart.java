package org.ionohaul.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.ChartRecord;
import org.ionohaul.rendering.Table;
import org.ionohaul.trial.ModeCard;

/**
 * A mode's frame loss against SNR on one path: a line a data rate. The losses go by decades, so that one frame in a hundred
 * can be told from one in ten.
 *
 * @param leastPercent the least loss that is shown, in %
 * @param dataRates a line a data rate, the most robust first
 */
record LossChart(double leastPercent, List<Line> dataRates) implements ChartRecord {
    private static final double LEAST_PERCENT = 0.1;

    /**
     * A line.
     *
     * @param snrDb SNR of the signal in 3 kHz
     * @param loss share of frames lost, in %
     * @param says the same in words
     * @param halfLostDb the SNR at which half of the frames are lost
     * @param tenthLostDb the SNR at which a tenth is lost
     * @param hundredthLostDb the SNR at which a hundredth is lost
     */
    record Line(
            List<Double> snrDb,
            List<Double> loss,
            List<String> says,
            double halfLostDb,
            double tenthLostDb,
            double hundredthLostDb) {
        static Line of(ModeCard.DataRate dataRate, int path) {
            ModeCard.OnPath on = dataRate.paths().get(path);
            long shown = 1
                    + on.curve().stream()
                            .filter(it -> 100 * it.loss() > LEAST_PERCENT)
                            .count();
            List<ModeCard.LossPoint> curve = on.curve().stream().limit(shown).toList();
            return new Line(
                    curve.stream().map(ModeCard.LossPoint::snrDb).toList(),
                    curve.stream()
                            .map(it -> Math.max(LEAST_PERCENT, 100 * it.loss()))
                            .toList(),
                    curve.stream().map(it -> says(dataRate.number(), it)).toList(),
                    on.halfLostDb(),
                    on.tenthLostDb(),
                    on.hundredthLostDb());
        }

        private static String says(int dataRate, ModeCard.LossPoint point) {
            return String.format(
                    Locale.ROOT, "Data rate %d at %.1f dB: %.3g %% lost", dataRate, point.snrDb(), 100 * point.loss());
        }
    }

    private static String tenthLost(ModeCard.OnPath path) {
        return Double.isFinite(path.tenthLostDb())
                ? String.format(Locale.ROOT, "%.1f dB", path.tenthLostDb())
                : "no SNR at all";
    }

    /**
     * Returns the picture.
     *
     * @param card the mode's data sheet
     * @param path index of the path among those of each data rate
     */
    static Chart chart(ModeCard card, int path) {
        String key = card.dataRates().get(0).paths().get(path).path().key();
        return new Chart(
                "loss-" + path,
                "Frames lost, path: " + key,
                "Share of frames lost over the signal's SNR in 3 kHz; a line a data rate with its number beside it, pale for the"
                        + " most robust and dark for the fastest. The numbers are in loss.csv.",
                "Falling lines, one a data rate: the share of frames lost over SNR. A tenth is lost at "
                        + card.dataRates().stream()
                                .map(it -> tenthLost(it.paths().get(path)))
                                .collect(Collectors.joining(", "))
                        + ", data rate 1 first.",
                new LossChart(
                        LEAST_PERCENT,
                        card.dataRates().stream().map(it -> Line.of(it, path)).toList()),
                Table.NONE);
    }
}
