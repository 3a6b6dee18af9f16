package org.ionohaul.onair;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.InputFile;
import org.ionohaul.scenario.Mode;
import org.ionohaul.statistics.Estimate;

/**
 * What runs on the air can tell, for programs, as JSON; the promise to its readers is that of the study's summary. The
 * records below and {@link Plan} are the format.
 */
public record RunsJson(RunAnswer answer) implements ResultFolder.Text {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 1;

    /** The whole of it. */
    record Published(
            String format,
            int formatVersion,
            String programVersion,
            String scenario,
            String title,
            long seed,
            int comparisonsAsked,
            int comparisonsDone,
            boolean partial,
            double confidence,
            List<Input> inputs,
            List<Change> changes,
            String transfer,
            Direction direction,
            List<String> modes,
            OptionalDouble deadlineSeconds,
            double startClockSeconds,
            double gapSeconds,
            double errorRate,
            List<Size> sizes,
            List<Way> designs,
            List<Stopping> stops,
            double longestEveningSeconds,
            List<Power> plans) {}

    /** A file that went in. */
    record Input(String name, String sha256) {}

    /** A key that got another value than the files give it. */
    record Change(String key, String value) {}

    /** What is truly better with files of a size; figures in seconds, or chances if there is a deadline. */
    record Size(
            long sentBytes,
            int trials,
            List<Estimate> figures,
            int leader,
            boolean isBetter,
            Optional<Estimate> lead) {}

    /** A way of comparing. */
    record Way(
            long sentBytes,
            RunOrder order,
            int runsEach,
            double airSeconds,
            double eveningSeconds,
            int evenings,
            List<Verdict> rules) {}

    /** What a rule makes of it: the chance that each mode is named. */
    record Verdict(Rule rule, List<Estimate> named, Estimate falseAlarm) {}

    /** What stopping early comes to. */
    record Stopping(
            RunOrder order, Stop stop, int mostRounds, List<Estimate> named, Estimate falseAlarm, double meanRounds) {}

    /** The plans of a power. */
    record Power(double power, List<Planned> plans) {}

    /** A plan. */
    record Planned(
            long sentBytes,
            RunOrder order,
            Plan.Way way,
            int runsEach,
            double meanRunsEach,
            Estimate right,
            Estimate falseAlarm,
            double airSeconds,
            double eveningSeconds,
            int evenings,
            boolean isWorkedOut) {}

    @Override
    public String fileName() {
        return "runs.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        JsonForm.writeFile(writer, published());
    }

    private Published published() {
        RunFindings findings = answer.findings();
        RunQuestion question = findings.question();
        return new Published(
                "ionohaul-runs",
                FORMAT_VERSION,
                answer.provenance().version(),
                question.scenario().name(),
                question.scenario().title(),
                question.scenario().seed(),
                question.comparisons(),
                findings.trialsDone(),
                findings.isPartial(),
                Estimate.CONFIDENCE,
                answer.provenance().inputs().stream().map(RunsJson::input).toList(),
                answer.provenance().changes().entrySet().stream()
                        .map(it -> new Change(it.getKey(), it.getValue()))
                        .toList(),
                question.transfer().name(),
                question.direction(),
                question.modes().stream().map(Mode::name).toList(),
                question.criterion().deadlineSeconds(),
                answer.startClockSeconds(),
                question.gapSeconds(),
                question.errorRate(),
                IntStream.range(0, findings.sizes().size())
                        .mapToObj(it -> size(bytes(it), findings.truths().get(it)))
                        .toList(),
                findings.designs().stream().map(this::way).toList(),
                findings.stops().stream().map(this::stopping).toList(),
                answer.longestEveningSeconds(),
                IntStream.range(0, RunAnswer.POWERS.size())
                        .mapToObj(it -> new Power(
                                RunAnswer.POWERS.get(it),
                                answer.plans().get(it).stream()
                                        .map(this::planned)
                                        .toList()))
                        .toList());
    }

    private static Input input(InputFile file) {
        return new Input(file.name(), file.sha256());
    }

    private long bytes(int size) {
        return answer.findings().sizes().get(size).totalBytes();
    }

    private static Size size(long bytes, Truth truth) {
        return new Size(bytes, truth.trials(), truth.figures(), truth.leader(), truth.isBetter(), truth.lead());
    }

    private Way way(DesignResult result) {
        return new Way(
                bytes(result.design().size()),
                result.design().order(),
                result.design().runsEach(),
                result.airSeconds(),
                result.eveningSeconds(),
                result.evenings(),
                result.rules().stream()
                        .map(it -> new Verdict(
                                it.rule(),
                                IntStream.range(0, it.named().size())
                                        .mapToObj(it::naming)
                                        .toList(),
                                it.falseAlarm()))
                        .toList());
    }

    private Stopping stopping(StopResult result) {
        return new Stopping(
                result.order(),
                result.stop(),
                result.mostRounds(),
                IntStream.range(0, result.named().size())
                        .mapToObj(result::naming)
                        .toList(),
                result.falseAlarm(),
                result.meanRounds());
    }

    private Planned planned(Plan plan) {
        return new Planned(
                bytes(plan.size()),
                plan.order(),
                plan.way(),
                plan.runsEach(),
                plan.meanRunsEach(),
                plan.right(),
                plan.falseAlarm(),
                plan.airSeconds(),
                plan.eveningSeconds(),
                plan.evenings(),
                plan.isWorkedOut());
    }
}
