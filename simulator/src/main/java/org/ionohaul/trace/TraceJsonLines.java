package org.ionohaul.trace;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.io.Writer;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.ionohaul.channel.End;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.session.Cause;
import org.ionohaul.session.TimeBudget;

/** A session's story for programs: a step a line, each a JSON object. */
public record TraceJsonLines(TraceStory story) implements ResultFolder.Text {
    /** A step; what only bursts have is left out of the others. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Step(
            TraceStep.Kind kind,
            long atNanos,
            long untilNanos,
            End station,
            String says,
            OptionalInt dataRate,
            OptionalInt frames,
            OptionalInt framesAgain,
            OptionalInt framesDecoded,
            Optional<Boolean> heard,
            Optional<Double> sinrDb,
            long heldBytes,
            Map<Cause, Long> spentNanos) {
        static Step of(TraceStep step) {
            boolean isBurst = step.kind() == TraceStep.Kind.BURST;
            return new Step(
                    step.kind(),
                    step.atNanos(),
                    step.untilNanos(),
                    step.at(),
                    step.says(),
                    where(step.dataRate() > 0, step.dataRate()),
                    where(isBurst, step.frames()),
                    where(isBurst, step.framesAgain()),
                    where(isBurst, step.framesDecoded()),
                    isBurst ? Optional.of(step.isHeard()) : Optional.empty(),
                    isBurst ? Optional.of(Math.round(100 * step.sinrDb()) / 100.0) : Optional.empty(),
                    step.heldBytes(),
                    nanos(step.spent()));
        }

        private static OptionalInt where(boolean isTold, int value) {
            return isTold ? OptionalInt.of(value) : OptionalInt.empty();
        }

        private static Map<Cause, Long> nanos(TimeBudget spent) {
            Map<Cause, Long> nanos = new EnumMap<>(Cause.class);
            Arrays.stream(Cause.values()).forEach(cause -> nanos.put(cause, spent.nanosOf(cause)));
            return nanos;
        }
    }

    @Override
    public String fileName() {
        return "story.jsonl";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        for (TraceStep step : story.steps()) {
            JsonForm.LINE.writeValue(writer, Step.of(step));
            writer.write('\n');
        }
    }
}
