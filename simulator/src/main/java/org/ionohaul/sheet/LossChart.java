package org.ionohaul.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Json;
import org.ionohaul.rendering.ModeSeries;
import org.ionohaul.rendering.Palette;
import org.ionohaul.rendering.Table;
import org.ionohaul.trial.ModeCard;

/**
 * A mode's frame loss against SNR on one path: a line a data rate, pale for the most robust and dark for the fastest. The losses
 * go by decades, so that one frame in a hundred can be told from one in ten.
 *
 * @param card the mode's data sheet
 * @param path index of the path among those of each data rate
 */
record LossChart(ModeCard card, int path) {
    private static final double LEAST_PERCENT = 0.1;
    private static final int HEIGHT_PIXELS = 300;

    /** Returns the chart. */
    Chart chart() {
        String key = card.dataRates().get(0).paths().get(path).path().key();
        return new Chart(
                "loss-" + path,
                "Frames lost, path: " + key,
                "Share of frames lost over the signal's SNR in 3 kHz; a line a data rate with its number beside it, pale for the"
                        + " most robust and dark for the fastest. The numbers are in loss.csv.",
                "Falling lines, one a data rate: the share of frames lost over SNR on path " + key
                        + ". The table above says where they cross 50, 10 and 1 %.",
                HEIGHT_PIXELS,
                options(),
                Table.NONE);
    }

    private Json options() {
        return Json.of(
                """
                {"grid": {"left": 54, "right": 26, "top": 12, "bottom": 42}, "tooltip": {"trigger": "item"},
                 "xAxis": {"type": "value", "scale": true, "name": "SNR in 3 kHz, dB", "nameGap": 26,
                           "axisLine": {"onZero": false}},
                 "yAxis": {"type": "log", "min": ?, "max": 100, "axisLine": {"onZero": false}, "axisLabel": {"formatter": "{value} %"}},
                 "series": ?}
                """,
                LEAST_PERCENT,
                Stream.concat(IntStream.range(0, card.dataRates().size()).mapToObj(this::line), Stream.of(numbers()))
                        .toList());
    }

    private Json line(int dataRate) {
        List<ModeCard.LossPoint> curve =
                card.dataRates().get(dataRate).paths().get(path).curve();
        long shown =
                1 + curve.stream().filter(it -> 100 * it.loss() > LEAST_PERCENT).count();
        List<Json> data = curve.stream()
                .limit(shown)
                .map(it -> ModeSeries.datum(
                        List.of(it.snrDb(), Math.max(LEAST_PERCENT, 100 * it.loss())),
                        String.format(
                                Locale.ROOT,
                                "Data rate %d at %.1f dB: %s lost",
                                dataRate + 1,
                                it.snrDb(),
                                lost(it.loss()))))
                .toList();
        return Json.of(
                """
                {"type": "line", "name": ?, "color": ?, "lineStyle": {"width": 1.8, "type": ?},
                 "symbol": "circle", "symbolSize": 4, "data": ?}
                """,
                "data rate " + (dataRate + 1),
                Palette.rung(dataRate, card.dataRates().size()),
                Palette.dashes(dataRate),
                data);
    }

    /** Returns the data rates' numbers, in turn where half, a tenth and a hundredth of the frames are lost. */
    private Json numbers() {
        List<Json> data = IntStream.range(0, card.dataRates().size())
                .mapToObj(dataRate -> {
                    ModeCard.OnPath on = card.dataRates().get(dataRate).paths().get(path);
                    List<Double> place = switch (dataRate % 3) {
                        case 0 -> List.of(on.halfLostDb(), 50.0);
                        case 1 -> List.of(on.tenthLostDb(), 10.0);
                        default -> List.of(on.hundredthLostDb(), 1.0);
                    };
                    return Json.of("{\"name\": ?, \"value\": ?}", String.valueOf(dataRate + 1), place);
                })
                .toList();
        return Json.of("""
                {"type": "scatter", "silent": true, "symbolSize": 1, "itemStyle": {"color": "transparent"}, "data": ?,
                 "label": {"show": true, "position": "right", "formatter": "{b}", "color": ?,
                           "textBorderColor": "#fff", "textBorderWidth": 2}}
                """, data, Palette.INK);
    }

    private static String lost(double loss) {
        return String.format(Locale.ROOT, "%.3g %%", 100 * loss);
    }
}
