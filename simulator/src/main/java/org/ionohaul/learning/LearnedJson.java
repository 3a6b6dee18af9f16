package org.ionohaul.learning;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.ionohaul.placing.PublishedSource;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Provenance;
import org.ionohaul.scenario.WrittenInput;
import org.ionohaul.statistics.Estimate;
import org.ionohaul.statistics.OrderedSample;

/**
 * What was learned from a log, for programs, as JSON; the promise to its readers is that of the study's summary. The records
 * below and {@link PublishedSource} are the format.
 */
public record LearnedJson(LearnedLog learned, Provenance provenance) implements ResultFolder.Text {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 1;

    /** The whole of it. */
    record Published(
            String format,
            int formatVersion,
            PublishedSource source,
            String log,
            int loggedRuns,
            int trials,
            double confidence,
            int simulatedLogs,
            double effectiveLogs,
            double chanceOfLess,
            boolean isExplained,
            boolean isWellFounded,
            List<Input> inputs,
            List<Pair> entangled,
            List<Case> forecasts) {}

    /** What became of an input. Spreads are in its unit or, without one, probabilities before. */
    record Input(
            String key,
            boolean isGap,
            boolean isDaily,
            Optional<String> date,
            Optional<String> unit,
            Spread before,
            Spread after,
            double shift,
            double widthLeft,
            boolean isUntouched,
            Optional<String> narrowed) {}

    /** What a distribution has half of itself below, and what a tenth and nine tenths, and the ends of the middle 95 of 100. */
    record Spread(double median, double tenth, double ninth, double low, double high) {}

    /** Two inputs that are not told apart well. */
    record Pair(String one, String other, double correlation) {}

    /** A transfer with a mode. */
    record Case(String transfer, Direction direction, String mode, Expected before, Expected after) {}

    /** What is to be expected of it. */
    record Expected(
            Estimate medianSeconds, OptionalDouble ninthSeconds, Estimate deliveredShare, List<Kept> deadlines) {}

    /** How likely a deadline is kept. */
    record Kept(double deadlineSeconds, Estimate share) {}

    @Override
    public String fileName() {
        return "learn.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        JsonForm.INDENTED_LINES.writeValue(writer, published());
        writer.write('\n');
    }

    private Published published() {
        Learned found = learned.learned();
        return new Published(
                "ionohaul-learn",
                FORMAT_VERSION,
                PublishedSource.of(learned.scenario(), provenance),
                learned.log().name(),
                learned.log().runs().size(),
                learned.scenario().trials(),
                Estimate.CONFIDENCE,
                found.sets(),
                found.effectiveSets(),
                found.chanceOfLess(),
                found.isExplained(),
                found.isWellFounded(),
                learned.inputs().stream().map(LearnedJson::input).toList(),
                learned.entangled().stream()
                        .map(it -> new Pair(it.one().key(), it.other().key(), it.correlation()))
                        .toList(),
                learned.forecasts().stream().map(LearnedJson::forecast).toList());
    }

    private static Input input(InputChange input) {
        Unknown unknown = input.unknown();
        return new Input(
                unknown.key(),
                unknown.isGap(),
                unknown.day().isPresent(),
                unknown.day().flatMap(Unknown.Day::date).map(it -> it.toString()),
                input.written().map(WrittenInput::unit),
                spread(input::value),
                spread(share -> input.value(input.quantile(share))),
                input.shift(),
                input.widthLeft(),
                input.isUntouched(),
                LearnedLog.isSharpened(input) ? input.narrowed() : Optional.empty());
    }

    private static Spread spread(DoubleUnaryOperator quantile) {
        double outside = 1 - Estimate.CONFIDENCE;
        return new Spread(
                quantile.applyAsDouble(0.5),
                quantile.applyAsDouble(0.1),
                quantile.applyAsDouble(0.9),
                quantile.applyAsDouble(outside / 2),
                quantile.applyAsDouble(1 - outside / 2));
    }

    private static Case forecast(Forecast forecast) {
        List<Double> deadlines = forecast.transfer().deadlinesSeconds();
        return new Case(
                forecast.transfer().name(),
                forecast.direction(),
                forecast.mode().name(),
                expected(forecast.before(), deadlines),
                expected(forecast.after(), deadlines));
    }

    private static Expected expected(OrderedSample times, List<Double> deadlines) {
        return new Expected(
                times.quantile(0.5, Estimate.CONFIDENCE),
                times.size() < Forecast.PROMISE.fewestTrials()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Forecast.PROMISE.of(times)),
                times.atMost(Double.MAX_VALUE).wilson(Estimate.CONFIDENCE),
                deadlines.stream()
                        .map(it -> new Kept(it, times.atMost(it).wilson(Estimate.CONFIDENCE)))
                        .toList());
    }
}
