package org.ionohaul.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ionohaul.analysis.Variation;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Mode;
import org.ionohaul.study.KeySweep;

/** What is said about a variation in plain words. */
final class VariationWords {
    private final Variation variation;
    private final List<Mode> modes;

    VariationWords(Variation variation) {
        this.variation = variation;
        this.modes = variation.scenario().modes();
    }

    /** Returns what the numbers rest on. */
    String basis() {
        return SizeText.grouped(variation.scenario().trials())
                + " simulated trials a value, the same skies for every value and mode, seed "
                + variation.scenario().seed() + ". Varied: "
                + String.join(
                        " and ",
                        keys().stream()
                                .map(it -> KeyName.withKey(variation.scenario(), it))
                                .toList()) + ".";
    }

    /** Returns the warning on a variation that was interrupted; empty for any other. */
    String partial() {
        if (!variation.isPartial()) {
            return "";
        }
        return "PARTIAL: interrupted after " + variation.points().size() + " of " + variation.pointsAsked()
                + (variation.sweeps().size() == 1 ? " values." : " combinations of values.");
    }

    /** Returns the keys varied. */
    List<String> keys() {
        return variation.sweeps().stream().map(KeySweep::key).toList();
    }

    /** Returns what a case comes to: what the change does to a mode, then which mode is best where. */
    List<String> sentences(int caseIndex) {
        List<String> sentences = new ArrayList<>();
        int mode = variation.told(caseIndex);
        for (int key = 0; key < variation.sweeps().size(); key++) {
            int at = variation.lastAlong(key);
            if (at > 0) {
                sentences.add(EffectWords.sentence(
                        change(key, at),
                        modes.get(mode).title(),
                        variation.point(at, caseIndex).modes().get(mode)));
            }
        }
        sentences.add(best(caseIndex));
        return sentences;
    }

    private String change(int key, int at) {
        String other = variation.sweeps().size() == 1
                ? ""
                : " (" + name(1 - key) + " = "
                        + variation.points().get(0).values().get(1 - key) + ")";
        return "With " + name(key) + " = "
                + variation.points().get(at).values().get(key) + " instead of "
                + variation.points().get(0).values().get(key) + other;
    }

    private String name(int key) {
        return KeyName.of(variation.scenario(), keys().get(key)).words();
    }

    private String best(int caseIndex) {
        List<String> labels = variation.points().stream()
                .map(it -> PointWords.bestSentence(it.cases().get(caseIndex), modes))
                .toList();
        if (labels.stream().distinct().count() == 1) {
            return (labels.size() == 1
                            ? "At " + value(0)
                            : variation.isPartial() ? "At every value done" : "At every value")
                    + ": " + labels.get(0) + ".";
        }
        return variation.sweeps().size() == 1 ? runs(labels) : counts(labels);
    }

    private String runs(List<String> labels) {
        List<String> runs = new ArrayList<>();
        for (int from = 0; from < labels.size(); ) {
            int to = from;
            while (to + 1 < labels.size() && labels.get(to + 1).equals(labels.get(from))) {
                to++;
            }
            runs.add(value(from) + (to == from ? "" : " to " + value(to)) + ": " + labels.get(from));
            from = to + 1;
        }
        return "At " + String.join("; at ", runs) + ".";
    }

    private String value(int index) {
        return String.join(", ", variation.points().get(index).values());
    }

    private static String counts(List<String> labels) {
        Map<String, Long> countsByLabel =
                labels.stream().collect(Collectors.groupingBy(it -> it, LinkedHashMap::new, Collectors.counting()));
        return "Of " + labels.size() + " combinations: "
                + countsByLabel.entrySet().stream()
                        .map(it -> it.getKey() + " at " + it.getValue())
                        .collect(Collectors.joining("; "))
                + ".";
    }
}
