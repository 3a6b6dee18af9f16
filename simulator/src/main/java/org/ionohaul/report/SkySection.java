package org.ionohaul.report;

/**
 * One evening's sky on the page.
 *
 * @param figure the picture, with what each speed level needs
 * @param ends what it comes to at each end
 */
public record SkySection(Figure figure, Table ends) {
    static SkySection of(SkyView view) {
        return new SkySection(
                new Figure(
                        "One evening of the " + TimeText.given(view.lengthSeconds()) + " after pressing send: trial "
                                + view.trial(),
                        "Blue: SNR in 3 kHz of a full-power carrier, the line through the middle of each short span, the"
                                + " band holding eight tenths of it. Orange: noise and other stations. Bars: other"
                                + " stations on the air.",
                        new SkyChart(view).svg("sky"),
                        SkyTables.needs(view)),
                SkyTables.ends(view));
    }
}
