package org.ionohaul.placing;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.ionohaul.channel.End;
import org.ionohaul.fieldlog.LoggedOutcome;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.fieldlog.NotedTime;
import org.ionohaul.rendering.JsonForm;
import org.ionohaul.rendering.ResultFolder;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Provenance;

/**
 * A log beside the simulation, for programs, as JSON; the promise to its readers is that of the study's summary. The records
 * below, {@link UsualPlace} and {@link PublishedSource} are the format.
 */
public record PlacementJson(LogPlacement placement, Provenance provenance) implements ResultFolder.Text {
    /** Version of the format; grows when a name changes its meaning or goes. */
    static final int FORMAT_VERSION = 1;

    private static final int PARTS = 20;

    /** The whole of it. */
    record Published(
            String format,
            int formatVersion,
            PublishedSource source,
            String log,
            int trialsAsked,
            int trialsDone,
            boolean partial,
            double errorRate,
            Check check,
            List<AtEnd> ends,
            List<Run> runs,
            List<UsualPlace> usualPlaces) {}

    /** What all runs say together. */
    record Check(
            double meanScore,
            double slownessP,
            double spreadRatio,
            double spreadP,
            boolean isTooHopeful,
            boolean isTooGloomy,
            boolean isTooSure,
            boolean isTooUnsure) {}

    /** What was read at an end, against what is stated. */
    record AtEnd(
            End end,
            String station,
            Gauge.What what,
            int readings,
            double aboveStatedDb,
            double lowDb,
            double highDb,
            boolean isBeyondChance,
            double chance,
            boolean isBeyondStated) {}

    /** A run among simulated ones. */
    record Run(
            int number,
            Optional<String> date,
            Optional<String> start,
            String mode,
            Direction direction,
            long sentBytes,
            LoggedOutcome outcome,
            OptionalLong throughBytes,
            Optional<Noted> session,
            Optional<Noted> delivered,
            boolean isSessionTimed,
            boolean isReadUsed,
            double rankLow,
            double rankHigh,
            double deliveredShare,
            List<Double> twentiethsSeconds) {}

    /** A time as it was written, and between what it may lie. */
    record Noted(double seconds, double lowSeconds, double highSeconds) {
        static Noted of(NotedTime time) {
            return new Noted(time.seconds(), time.lowSeconds(), time.highSeconds());
        }
    }

    @Override
    public String fileName() {
        return "place.json";
    }

    @Override
    public void writeTo(Writer writer) throws IOException {
        JsonForm.writeFile(writer, published());
    }

    private Published published() {
        ModelCheck check = placement.check();
        return new Published(
                "ionohaul-place",
                FORMAT_VERSION,
                PublishedSource.of(placement.scenario(), provenance),
                placement.log().name(),
                placement.scenario().trials(),
                placement.trials(),
                placement.isPartial(),
                ModelCheck.ERROR_RATE,
                new Check(
                        check.meanScore(),
                        check.slownessP(),
                        check.spreadRatio(),
                        check.spreadP(),
                        check.isTooHopeful(),
                        check.isTooGloomy(),
                        check.isTooSure(),
                        check.isTooUnsure()),
                placement.ends().stream().map(this::atEnd).toList(),
                placement.runs().stream().map(PlacementJson::run).toList(),
                placement.usual());
    }

    private AtEnd atEnd(EndCheck check) {
        return new AtEnd(
                check.end(),
                placement.scenario().station(check.end()).name(),
                check.what(),
                check.readings(),
                check.aboveStatedDb(),
                check.lowDb(),
                check.highDb(),
                check.isBeyondChance(),
                check.chance(),
                check.isBeyondStated());
    }

    private static Run run(PlacedRun placed) {
        LoggedRun run = placed.run();
        return new Run(
                run.number(),
                run.date().map(it -> it.toString()),
                run.start().map(it -> String.format(Locale.ROOT, "%02d:%02d", it.getHour(), it.getMinute())),
                run.mode(),
                run.direction(),
                run.sentBytes(),
                run.outcome(),
                run.throughBytes(),
                run.sessionTime().map(Noted::of),
                run.deliveredAfter().map(Noted::of),
                placed.isSessionTimed(),
                placed.isReadUsed(),
                placed.rank().low(),
                placed.rank().high(),
                placed.deliveredShare(),
                IntStream.range(1, PARTS)
                        .mapToObj(it -> placed.times().quantile((double) it / PARTS))
                        .toList());
    }
}
