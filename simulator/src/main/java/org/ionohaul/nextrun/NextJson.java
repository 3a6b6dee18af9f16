package org.ionohaul.nextrun;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.placing.Gauge;
import org.ionohaul.placing.PublishedSource;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.statistics.Estimate;

/**
 * Which run to make next, for programs, as JSON; the promise to its readers is that of the study's summary. The records below are
 * the format.
 */
public record NextJson(NextRun next, Provenance provenance) implements ResultFolder.Text {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 1;

    /** The whole of it. */
    record Published(
            String format,
            int formatVersion,
            PublishedSource source,
            double confidence,
            int loggedRuns,
            OptionalInt simulatedLogs,
            int sets,
            String transfer,
            Direction direction,
            double deadlineSeconds,
            double worthShare,
            double limitSeconds,
            NextRun.Verdict verdict,
            String choice,
            Estimate wrongNow,
            List<Chance> kept,
            List<Valued> candidates) {}

    /** How often a mode keeps the deadline. */
    record Chance(String mode, Estimate share) {}

    /** What a candidate is worth. */
    record Valued(
            String kind,
            Optional<String> mode,
            Optional<Direction> direction,
            OptionalLong sentBytes,
            Optional<String> start,
            Optional<End> readAt,
            Optional<Gauge.What> readWhat,
            double airSeconds,
            Estimate fewerWrong,
            Estimate fewerWrongPerMin,
            double otherChoice,
            int times,
            Estimate fewerWrongInTime,
            boolean mayBeBest) {
        static Valued of(Worth worth) {
            Optional<Candidate.Send> send = Optional.of(worth.candidate())
                    .filter(Candidate.Send.class::isInstance)
                    .map(Candidate.Send.class::cast);
            Optional<Candidate.Listen> listen = Optional.of(worth.candidate())
                    .filter(Candidate.Listen.class::isInstance)
                    .map(Candidate.Listen.class::cast);
            return new Valued(
                    send.isPresent() ? "send" : "read",
                    send.map(it -> it.mode().name()),
                    send.map(Candidate.Send::direction),
                    send.map(it -> OptionalLong.of(it.bytes())).orElse(OptionalLong.empty()),
                    send.flatMap(Candidate.Send::start).map(Object::toString),
                    listen.map(Candidate.Listen::end),
                    listen.map(Candidate.Listen::what),
                    worth.airSeconds(),
                    worth.fewerWrong(),
                    worth.fewerWrongPerMinute(),
                    worth.changedShare(),
                    worth.times(),
                    worth.fewerWrongInTime(),
                    worth.mayBeBest());
        }
    }

    @Override
    public String fileName() {
        return "next.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        JsonForm.writeFile(writer, published());
    }

    private Published published() {
        NextQuestion question = next.question();
        Scenario scenario = question.understood().scenario();
        Valuation.Found found = next.found().orElseThrow();
        return new Published(
                "ionohaul-next",
                FORMAT_VERSION,
                PublishedSource.of(scenario, provenance),
                Estimate.CONFIDENCE,
                question.log().map(it -> it.runs().size()).orElse(0),
                next.learned().map(it -> OptionalInt.of(it.sets())).orElse(OptionalInt.empty()),
                found.sets(),
                question.transfer().name(),
                question.direction(),
                question.deadlineSeconds(),
                question.worthIt(),
                question.limitSeconds(),
                next.verdict(),
                next.choice().name(),
                found.wrongNow(),
                IntStream.range(0, scenario.modes().size())
                        .mapToObj(it -> new Chance(
                                scenario.modes().get(it).name(), found.chances().get(it)))
                        .toList(),
                found.worths().stream().map(Valued::of).toList());
    }
}
