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
import org.ionohaul.report.LeaderWords;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.Scenario;

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
                + ". Set to either end of its range, each alone: "
                + LeaderWords.and(tornado.bars().stream()
                        .map(it -> KeyName.withKey(tornado.scenario(), it.key()))
                        .toList())
                + ". What matters most comes first below.";
    }

    /** Returns the warning on a tornado that was interrupted; empty for any other. */
    String partial() {
        if (!tornado.isPartial()) {
            return "";
        }
        return "PARTIAL: interrupted after " + tornado.bars().size() + " of " + tornado.keysAsked() + " inputs.";
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
        List<String> inputs = tornado.mattering(caseIndex).stream()
                .map(it -> KeyName.of(tornado.scenario(), it.key()).words())
                .toList();
        if (inputs.isEmpty()) {
            return "None of these changes the time of " + title + " beyond chance.";
        }
        return "What matters most for the time of " + title + " is " + inputs.get(0)
                + (inputs.size() == 1
                        ? ""
                        : ", though chance leaves open whether more than "
                                + String.join(" or ", inputs.subList(1, inputs.size())))
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

    /** Returns what an input is set to at an end of its range. */
    static String end(Scenario scenario, String key, VariationPoint point) {
        return KeyName.of(scenario, key).words() + " = " + point.values().get(0);
    }

    private String effect(TornadoBar bar, VariationPoint point, int caseIndex, int mode) {
        return EffectWords.sentence(
                "With " + end(tornado.scenario(), bar.key(), point),
                modes.get(mode).title(),
                point.cases().get(caseIndex).modes().get(mode));
    }
}
