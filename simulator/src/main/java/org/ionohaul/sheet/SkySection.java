package org.ionohaul.sheet;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.channel.End;
import org.ionohaul.channel.WatchSummary;
import org.ionohaul.rendering.Chart;
import org.ionohaul.rendering.DecibelText;
import org.ionohaul.rendering.OddsText;
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
                "SNR in 3 kHz of a full-power carrier: the line through the middle of each short span, the band"
                        + " holding eight tenths of it. Dashed: noise and other stations, in dB over the noise"
                        + " floor. Bars: other stations on the air.",
                Stream.of(End.values()).map(it -> finding(view, it)).collect(Collectors.joining(" ")),
                SkyChart.of(view),
                SkyTables.needs(view));
    }

    private static String finding(SkyView view, End end) {
        WatchSummary whole = view.at(end).summary();
        return SkyTables.heading(view, end) + ": SNR over time, half of it above "
                + DecibelText.whole(whole.sinrDb().median()) + ", nine tenths above "
                + DecibelText.whole(whole.sinrDb().low()) + "; others on the air "
                + OddsText.percent(Math.min(1, whole.occupiedShare())) + " of the time.";
    }
}
