package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.List;
import org.ionohaul.analysis.CasePoint;
import org.ionohaul.analysis.ModePoint;
import org.ionohaul.analysis.Tornado;
import org.ionohaul.analysis.TornadoBar;
import org.ionohaul.analysis.VariationPoint;
import org.ionohaul.rendering.OddsText;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Mode;

/** What is said about a tornado in plain words. */
final class TornadoWords {
    private final Tornado tornado;
    private final List<Mode> modes;

    TornadoWords(Tornado tornado) {
        this.tornado = tornado;
        this.modes = tornado.scenario().modes();
    }

    /** Returns what the numbers rest on. */
    String basis() {
        return SizeText.grouped(tornado.scenario().trials())
                + " simulated trials a value, the same skies for every value and mode, seed "
                + tornado.scenario().seed()
                + ". Each key alone is set to either end of its range; the key that matters most comes first.";
    }

    /** Returns the warning on a tornado that was interrupted; empty for any other. */
    String partial() {
        if (!tornado.isPartial()) {
            return "";
        }
        return "PARTIAL: interrupted after " + tornado.bars().size() + " of " + tornado.keysAsked() + " keys.";
    }

    /** Returns what a case comes to: what matters most and what it does, then how the scenario stands. */
    List<String> sentences(int caseIndex) {
        int mode = tornado.told(caseIndex);
        List<String> sentences = new ArrayList<>();
        if (tornado.reference().cases().get(caseIndex).choice() != CasePoint.Choice.NOTHING_ARRIVES) {
            TornadoBar most = tornado.ranked(caseIndex, mode).get(0);
            sentences.add(most(caseIndex, mode));
            sentences.add(effect(most, most.low(), caseIndex, mode) + " " + effect(most, most.high(), caseIndex, mode));
        }
        sentences.add(stands(caseIndex, mode));
        return sentences;
    }

    private String most(int caseIndex, int mode) {
        String title = modes.get(mode).title();
        List<String> keys =
                tornado.mattering(caseIndex).stream().map(TornadoBar::key).toList();
        if (keys.isEmpty()) {
            return "None of these keys changes the time of " + title + " beyond chance.";
        }
        return "What matters most for the time of " + title + " is " + keys.get(0)
                + (keys.size() == 1
                        ? ""
                        : ", though chance leaves open whether more than "
                                + String.join(" or ", keys.subList(1, keys.size())))
                + ".";
    }

    private String stands(int caseIndex, int mode) {
        ModePoint point = tornado.reference().cases().get(caseIndex).modes().get(mode);
        return "As it stands: "
                + switch (tornado.reference().cases().get(caseIndex).choice()) {
                    case NOTHING_ARRIVES -> "no mode gets anything through.";
                    case TOO_CLOSE_TO_CALL ->
                        PointWords.bestSentence(tornado.reference().cases().get(caseIndex), modes) + "; with "
                                + modes.get(mode).title() + " " + within(point);
                    case CLEAR -> modes.get(mode).title() + " is best; " + within(point);
                };
    }

    private static String within(ModePoint point) {
        return Double.isFinite(point.ninthSeconds().value())
                ? "9 of 10 trials within "
                        + TimeText.length(point.ninthSeconds().value()) + "."
                : "on " + OddsText.simulated(point.delivered()) + " trials it gets through.";
    }

    private String effect(TornadoBar bar, VariationPoint point, int caseIndex, int mode) {
        return EffectWords.sentence(
                "With " + bar.key() + " = " + point.values().get(0),
                modes.get(mode).title(),
                point.cases().get(caseIndex).modes().get(mode));
    }
}
