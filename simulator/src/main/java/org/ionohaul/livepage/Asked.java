package org.ionohaul.livepage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.livepage.AnswerView.Glance;
import org.ionohaul.livepage.AnswerView.Remark;
import org.ionohaul.livepage.AnswerView.Side;
import org.ionohaul.livepage.LiveRun.Seen;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Problem;
import org.ionohaul.scenario.ScenarioProblems;
import org.ionohaul.scenario.Warning;
import org.ionohaul.sheet.RhythmWarnings;
import org.ionohaul.whatif.SettingsCompared;

/**
 * What a page asks, with the runs that answer it.
 *
 * @param question what is asked
 * @param runs one a setting; empty if any can't be simulated
 * @param remarks what is wrong or odd about the settings
 */
record Asked(Question question, List<LiveRun> runs, List<Remark> remarks) {
    private static final List<String> NAMES = List.of("First setting", "Second setting");

    Asked {
        runs = List.copyOf(runs);
        remarks = List.copyOf(remarks);
    }

    static Asked of(Question question, ScenarioOnPage scenario, LiveRuns all) {
        List<Remark> remarks = new ArrayList<>();
        question.unknown()
                .forEach(it -> remarks.add(new Remark(it, it + ": this page has no such control; left out", false)));
        List<LiveRun> runs = new ArrayList<>();
        for (int i = 0; i < question.settings().size(); i++) {
            String prefix = i == 0 ? "" : Question.SECOND;
            Map<String, String> setting = question.settings().get(i);
            try {
                LiveRun run = run(setting, scenario, all);
                runs.add(run);
                Stream.concat(run.understood().warnings().stream(), RhythmWarnings.of(run.understood()).stream())
                        .map(Warning::told)
                        .forEach(it -> remarks.add(remark(it, prefix, false)));
            } catch (ScenarioProblems e) {
                e.problems().forEach(it -> remarks.add(remark(it, prefix, true)));
            }
        }
        boolean isWhole = runs.size() == question.settings().size();
        return new Asked(question, isWhole ? runs : List.of(), remarks);
    }

    private static LiveRun run(Map<String, String> setting, ScenarioOnPage scenario, LiveRuns all)
            throws ScenarioProblems {
        Optional<LiveRun> known = all.of(setting);
        return known.isPresent() ? known.get() : all.keep(setting, scenario.run(setting));
    }

    /** Beside its control, the key need not be said again. */
    private static Remark remark(Problem told, String prefix, boolean isProblem) {
        return new Remark(
                prefix + told.key(), told.message() + (told.remedy().isEmpty() ? "" : "; " + told.remedy()), isProblem);
    }

    /** Returns what is known so far. */
    AnswerView view() {
        List<Optional<Seen>> seen = runs.stream().map(LiveRun::seen).toList();
        boolean isOver = runs.stream().allMatch(LiveRun::isOver);
        // One axis for both, so that what is longer looks longer.
        double endSeconds = seen.stream()
                .flatMap(Optional::stream)
                .mapToDouble(it -> it.race(question.place()).endSeconds())
                .max()
                .orElse(1);
        List<Side> sides = IntStream.range(0, runs.size())
                .mapToObj(i -> side(i, seen.get(i), endSeconds))
                .toList();
        return new AnswerView(
                sides.stream().map(it -> Integer.toString(it.done())).collect(Collectors.joining("-"))
                        + (isOver ? " over " : " of ")
                        + Integer.toHexString(List.of(question, remarks).hashCode()),
                isOver,
                remarks,
                sides,
                differences(seen));
    }

    private List<String> differences(List<Optional<Seen>> seen) {
        return seen.size() < 2 || seen.stream().anyMatch(Optional::isEmpty)
                ? List.of()
                : SettingsCompared.sentences(
                        seen.get(0).orElseThrow().result(),
                        seen.get(1).orElseThrow().result(),
                        question.keysThatDiffer(),
                        "with the second setting");
    }

    private Side side(int index, Optional<Seen> seen, double endSeconds) {
        LiveRun run = runs.get(index);
        int asked = run.understood().scenario().trials();
        int done = seen.map(it -> it.result().trialsDone()).orElse(0);
        return new Side(
                runs.size() == 1 ? "Which mode, and how surely" : NAMES.get(index),
                new TreeMap<>(question.settings().get(index))
                        .entrySet().stream()
                                .map(it -> KeyName.of(run.understood().scenario(), it.getKey())
                                                .words()
                                        + " = " + it.getValue())
                                .toList(),
                progress(run, done, asked),
                done,
                asked,
                seen.stream()
                        .map(it -> new Glance(
                                it.glance(),
                                it.race(question.place()).chart("race-" + (index + 1), endSeconds, it.order())))
                        .toList());
    }

    private static String progress(LiveRun run, int done, int asked) {
        String trials = SizeText.grouped(done) + " of " + SizeText.grouped(asked)
                + " trials, each mode under the same sky, seed "
                + run.understood().scenario().seed();
        if (run.failure().isPresent()) {
            return trials + ". It can't go on: " + run.failure().get();
        }
        if (done == 0) {
            return "Simulating the first trials, seed "
                    + run.understood().scenario().seed() + " ...";
        }
        return run.isOver()
                ? trials + (done < asked ? ". More have no room on this page; ionohaul study runs them all." : ".")
                : trials + "; more are coming in.";
    }
}
