package org.ionohaul.traffic;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;
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
            Map<String, String> changes,
            String varied,
            List<Point> points) {}

    /** A file that went in. */
    record Input(String name, String sha256) {}

    /** A value of the varied key. */
    record Point(
            String value,
            int trials,
            Optional<Estimate> through,
            Estimate occupied,
            Estimate collided,
            Estimate toBusyGateway,
            Estimate callsATrial,
            Estimate refusedATrial,
            Estimate cutOffATrial,
            Estimate fairness,
            Estimate waitingAtMiddle,
            Estimate waitingAtEnd,
            Estimate growth,
            boolean pilesUp,
            List<Kind> kinds) {}

    /** A kind of message. */
    record Kind(
            String group,
            String message,
            double writtenATrial,
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
                provenance.changes(),
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
                findings.callsATrial(),
                findings.refusedATrial(),
                findings.cutOffATrial(),
                findings.fairness(),
                findings.waitingAtMiddle(),
                findings.waitingAtEnd(),
                findings.growth(),
                findings.pilesUp(),
                findings.kinds().stream().map(NetJson::kind).toList());
    }

    private static Kind kind(KindFindings kind) {
        List<Double> deadlines = kind.kind().deadlinesSeconds();
        return new Kind(
                kind.group().name(),
                kind.kind().name(),
                kind.writtenATrial(),
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
