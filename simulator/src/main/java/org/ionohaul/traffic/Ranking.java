package org.ionohaul.traffic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ionohaul.net.Access;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.statistics.Estimate;

/**
 * Which value of a key serves each kind of message best: by its first deadline, or by the time that 9 of 10 keep if it has none. A
 * value is best if its interval lies clear of every other's; else those that reach into the best one's can't be told apart.
 *
 * @param points what each value comes to, at least two
 */
record Ranking(List<NetPoint> points) {
    /** A value of the key and what it comes to, more being better. */
    private record Entry(String value, Estimate merit, String words) {}

    /** Copies the list. */
    Ranking {
        points = List.copyOf(points);
    }

    /** Returns a sentence for each kind of message, and what else is to be known. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        int kinds = points.get(0).findings().kinds().size();
        for (int kind = 0; kind < kinds; kind++) {
            List<Entry> entries = entries(kind);
            if (entries.size() > 1) {
                sentences.add(asked(kind) + ": " + ranked(entries));
            }
        }
        if (points.stream().anyMatch(it -> it.findings().scenario().discipline().access() == Access.IN_TURN)) {
            sentences.add(NetWords.BOUND);
        }
        return sentences;
    }

    private KindFindings of(NetPoint point, int kind) {
        return point.findings().kinds().get(kind);
    }

    private boolean hasDeadline(int kind) {
        return points.stream()
                .noneMatch(it -> of(it, kind).kind().deadlinesSeconds().isEmpty());
    }

    private String asked(int kind) {
        NetFindings first = points.get(0).findings();
        KindFindings findings = first.kinds().get(kind);
        String name = findings.name(first.scenario().groups().size() > 1);
        return hasDeadline(kind)
                ? name + " in "
                        + TimeText.given(findings.kind().deadlinesSeconds().get(0))
                : name + ", 9 of 10";
    }

    private List<Entry> entries(int kind) {
        List<Entry> entries = new ArrayList<>();
        for (NetPoint point : points) {
            KindFindings findings = of(point, kind);
            if (!hasDeadline(kind)) {
                entries.add(byTime(point.value(), findings.nineOfTen()));
            } else if (findings.deadlines().get(0).isPresent()) {
                Estimate chance = findings.deadlines().get(0).get();
                entries.add(new Entry(point.value(), chance, NetWords.share(chance)));
            }
        }
        entries.sort(
                Comparator.comparingDouble((Entry it) -> it.merit().value()).reversed());
        return entries;
    }

    private static Entry byTime(String value, Estimate seconds) {
        String words = Double.isInfinite(seconds.value())
                ? "not while watched"
                : "within " + TimeText.length(seconds.value())
                        + (Double.isInfinite(seconds.high())
                                ? ""
                                : " (" + TimeText.length(seconds.low()) + " to " + TimeText.length(seconds.high())
                                        + ")");
        return new Entry(value, new Estimate(-seconds.value(), -seconds.high(), -seconds.low()), words);
    }

    private static String ranked(List<Entry> entries) {
        double least = entries.get(0).merit().low();
        int leaders = (int) IntStream.range(0, entries.size())
                .filter(it -> it == 0 || entries.get(it).merit().high() >= least)
                .count();
        String first = leaders == 1
                ? entries.get(0).value() + " is best, " + entries.get(0).words()
                : listed(entries.subList(0, leaders)) + " can't be told apart";
        return first + (leaders < entries.size() ? "; then " + listed(entries.subList(leaders, entries.size())) : "")
                + ".";
    }

    private static String listed(List<Entry> entries) {
        return entries.stream().map(it -> it.value() + " " + it.words()).collect(Collectors.joining(", "));
    }
}
