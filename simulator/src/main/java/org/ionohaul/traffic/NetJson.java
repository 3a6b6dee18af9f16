package org.ionohaul.traffic;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.statistics.Estimate;

/**
 * What a net comes to, for programs, as JSON; the promise to its readers is that of the study's summary. The records below are
 * the format.
 *
 * @param key the key that is varied; empty if none
 * @param points at least one
 * @param provenance where the net comes from
 * @param trialsAsked how many trials there were to be of each
 */
public record NetJson(String key, List<NetPoint> points, Provenance provenance, int trialsAsked)
        implements ResultFolder.Text {
    static final int FORMAT_VERSION = 1;

    /** The whole of it. */
    record Published(
            String format,
            int formatVersion,
            String programVersion,
            String net,
            String title,
            long seed,
            int stations,
            int trialsAsked,
            double confidence,
            double horizonSeconds,
            double warmUpSeconds,
            List<Input> inputs,
            List<Change> changes,
            String varied,
            List<Point> points) {}

    /** A file that went in. */
    record Input(String name, String sha256) {}

    /** A key that got another value than the file gives it. */
    record Change(String key, String value) {}

    /** A value of the varied key. */
    record Point(
            String value,
            int trials,
            Optional<Estimate> through,
            Estimate occupied,
            Estimate collided,
            Estimate toBusyGateway,
            Estimate callsPerTrial,
            Estimate refusedPerTrial,
            Estimate cutOffPerTrial,
            Estimate fairness,
            Waiting waiting,
            List<Kind> kinds) {}

    /** How many messages wait, and whether they pile up. */
    record Waiting(
            Estimate atMiddle, Estimate atEnd, Estimate leftBehind, Estimate beyondLimit, Backlog.Verdict verdict) {}

    /** A kind of message. */
    record Kind(
            String group,
            String message,
            double writtenPerTrial,
            Estimate halfSeconds,
            Estimate nineOfTenSeconds,
            List<Within> deadlines,
            Optional<Estimate> through,
            Optional<Estimate> givenUp,
            Optional<Estimate> meanWaitSeconds,
            Optional<Estimate> meanHandOverSeconds,
            Optional<Estimate> meanCalls) {}

    /** A deadline. */
    record Within(double deadlineSeconds, Optional<Estimate> chance) {}

    @Override
    public String fileName() {
        return "net.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        JsonForm.writeFile(writer, published());
    }

    private Published published() {
        NetFindings first = points.get(0).findings();
        return new Published(
                "ionohaul-net",
                FORMAT_VERSION,
                provenance.version(),
                first.scenario().name(),
                first.scenario().title(),
                first.scenario().seed(),
                first.scenario().stations(),
                trialsAsked,
                Estimate.CONFIDENCE,
                first.scenario().horizonSeconds(),
                first.scenario().warmUpSeconds(),
                provenance.inputs().stream()
                        .map(it -> new Input(it.name(), it.sha256()))
                        .toList(),
                provenance.changes().entrySet().stream()
                        .map(it -> new Change(it.getKey(), it.getValue()))
                        .toList(),
                key,
                points.stream().map(NetJson::point).toList());
    }

    private static Point point(NetPoint point) {
        NetFindings findings = point.findings();
        return new Point(
                point.value(),
                findings.trialsDone(),
                findings.through(),
                findings.occupied(),
                findings.collided(),
                findings.toBusyGateway(),
                findings.callsPerTrial(),
                findings.refusedPerTrial(),
                findings.cutOffPerTrial(),
                findings.fairness(),
                waiting(findings.backlog()),
                findings.kinds().stream().map(NetJson::kind).toList());
    }

    private static Waiting waiting(Backlog backlog) {
        return new Waiting(
                backlog.atMiddle(), backlog.atEnd(), backlog.leftBehind(), backlog.beyondLimit(), backlog.verdict());
    }

    private static Kind kind(KindFindings kind) {
        List<Double> deadlines = kind.kind().deadlinesSeconds();
        return new Kind(
                kind.group().name(),
                kind.kind().name(),
                kind.writtenPerTrial(),
                kind.half(),
                kind.nineOfTen(),
                IntStream.range(0, deadlines.size())
                        .mapToObj(it ->
                                new Within(deadlines.get(it), kind.deadlines().get(it)))
                        .toList(),
                kind.through(),
                kind.givenUp(),
                kind.waitSeconds(),
                kind.handOverSeconds(),
                kind.calls());
    }
}
