package org.ionohaul.sheet;

import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.Table;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.trial.SkyView;

/**
 * The sky on the page: that of all trials, and one as an example.
 *
 * @param trials what it comes to at each end, over the study's trials
 * @param chart the picture of one, with what each data rate needs
 * @param ends what that one comes to at each end
 */
public record SkySection(Table trials, Chart chart, Table ends) {
    /**
     * Returns what a page says of a sky.
     *
     * @param view the sky of one trial
     * @param trials what it comes to at each end, over the study's trials
     */
    public static SkySection of(SkyView view, Table trials) {
        return new SkySection(trials, chart(view), SkyTables.ends(view));
    }

    /** Returns the picture of one trial. */
    static Chart chart(SkyView view) {
        return new Chart(
                "sky-" + view.trial(),
                "One trial of the " + TimeText.given(view.lengthSeconds()) + " after pressing send: trial "
                        + view.trial(),
                "Dark: SNR in 3 kHz of a full-power carrier, the line through the middle of each short span, the band"
                        + " holding eight tenths of it. Dashed: noise and other stations, in dB over the noise"
                        + " floor. Bars along the top: other stations on the air.",
                "For each end the SNR over time, what disturbs it, and when other stations are on the air. The table above"
                        + " sums it up.",
                SkyChart.of(view),
                SkyTables.needs(view));
    }
}
