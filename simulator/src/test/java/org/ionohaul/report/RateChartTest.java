package org.ionohaul.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ionohaul.analysis.Findings;
import org.ionohaul.picture.Picture;
import org.ionohaul.rendering.Cell;
import org.ionohaul.rendering.Chart;
import org.junit.jupiter.api.Test;

/** The picture of net rates against SNR, of made-up rates that can be reckoned on paper. */
final class RateChartTest {
    private static final Findings FINDINGS = FabricatedStudy.findings(FabricatedStudy.TRIALS);

    private final Chart chart =
            RateChart.chart(FINDINGS.result().scenario(), FINDINGS.rates().orElseThrow(), FINDINGS.skies());

    /** 50 s against 20 (s + 15) bit/s: equal at 10 dB, so that the next level measured is 12 dB. */
    @Test
    void itSaysWhichModeIsFastestFromWhere() {
        assertTrue(chart.description().contains("Tough from -8 dB on, then Quick from 12 dB on."), chart::description);
    }

    /** The far end's skies go from 20 dB down to 10.1 dB, a tenth of a decibel a trial; the near end's stay. */
    @Test
    void itTellsAndShadesTheScenariosOwnRange() {
        assertTrue(
                chart.description().endsWith("at Weir Cottage: 17 dB, at Flood Desk: 11 to 19 dB."),
                chart::description);
        String svg = chart.picture().svg(Picture.NARROW);
        Matcher ranges = Pattern.compile("class=\"range\" x=\"([\\d.]+)\" y=\"[\\d.]+\" width=\"([\\d.]+)\"")
                .matcher(svg);
        assertTrue(ranges.find(), svg);
        assertTrue(ranges.find(), svg);
        Matcher axis = Pattern.compile("x=\"([\\d.]+)\"[^>]*>(0|40)<").matcher(svg);
        assertTrue(axis.find(), svg);
        double zero = Double.parseDouble(axis.group(1));
        assertTrue(axis.find(), svg);
        double decibel = (Double.parseDouble(axis.group(1)) - zero) / 40;
        // Labels at the picture's edge may be moved inwards by half their width: some 8 of 40 decibels' pixels.
        assertEquals(11, (Double.parseDouble(ranges.group(1)) - zero) / decibel, 0.5);
        assertEquals(8, Double.parseDouble(ranges.group(2)) / decibel, 0.5);
    }

    @Test
    void itsNumbersStandInATable() {
        List<Cell> twelve = chart.table().rows().stream()
                .filter(it -> it.get(0).text().equals("12 dB"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of(Cell.of("12 dB"), new Cell("600", "540 to 660"), new Cell("540", "486 to 594")), twelve);
    }
}
