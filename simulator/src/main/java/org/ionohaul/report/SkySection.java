package org.ionohaul.report;

/**
 * The sky on the page: that of all evenings, and one as an example.
 *
 * @param evenings what it comes to at each end, over the study's evenings
 * @param figure the picture of one, with what each speed level needs
 * @param ends what that one comes to at each end
 */
public record SkySection(Table evenings, Figure figure, Table ends) {
    static SkySection of(SkyView view, Table evenings) {
        return new SkySection(
                evenings,
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
