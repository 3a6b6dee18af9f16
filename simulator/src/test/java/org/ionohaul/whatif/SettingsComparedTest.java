package org.ionohaul.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ionohaul.report.FabricatedStudy;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.study.StudyResult;
import org.junit.jupiter.api.Test;

/** One study beside another: what changes from the one setting to the other. */
final class SettingsComparedTest {
    private static final String UPLOAD =
            "Photo: gauge.jpg, 48 kB; roster <v2> & \"list\", final.txt, 2 kB, from Weir Cottage to Flood Desk: ";
    private static final String DOWNLOAD =
            "Photo: gauge.jpg, 48 kB; roster <v2> & \"list\", final.txt, 2 kB, from Flood Desk to Weir Cottage: ";

    private static List<String> sentences(StudyResult before, StudyResult after) {
        return SettingsCompared.sentences(before, after, List.of("near.snr"), "there");
    }

    /** On the first thirty trials "Quick" is ahead; of two studies as many trials are compared as both have done. */
    @Test
    void whatIsToldIsWhatHappensToTheBestModeOnTheTrialsThatBothHave() {
        assertEquals(
                List.of(
                        UPLOAD + "there, Quick is through 40 s later on the median trial.",
                        DOWNLOAD + "there, Quick is through 40 s later on the median trial."),
                sentences(FabricatedStudy.result(30), FabricatedStudy.later(40)));
        assertEquals(
                UPLOAD + "there, Quick is through 40 s sooner on the median trial.",
                sentences(FabricatedStudy.later(40), FabricatedStudy.result(30)).get(0));
        assertEquals(
                UPLOAD + "there, not one trial differs for Tough.",
                sentences(FabricatedStudy.result(), FabricatedStudy.later(40)).get(0));
    }

    /** Varied files have other names and sizes before and after, so that the case has its transfer's name alone. */
    @Test
    void filesThatDifferAreNotNamed() {
        assertEquals(
                "Photo, from Weir Cottage to Flood Desk: there, not one trial differs for Tough.",
                SettingsCompared.sentences(
                                FabricatedStudy.result(),
                                FabricatedStudy.result(),
                                List.of("transfer.photo.size"),
                                "there")
                        .get(0));
    }

    /** Other skies can't be compared trial by trial. */
    @Test
    void studiesOfAnotherSeedAreNotCompared() {
        StudyResult one = FabricatedStudy.result();
        Scenario of = one.scenario();
        Scenario other = new Scenario(
                of.name(),
                of.title(),
                of.seed() + 1,
                of.trials(),
                of.horizonSeconds(),
                of.distanceMetres(),
                of.transfers(),
                of.modes(),
                of.near(),
                of.far(),
                of.sky());
        assertEquals(List.of(), sentences(one, new StudyResult(other, one.cases(), 100, 100)));
    }
}
