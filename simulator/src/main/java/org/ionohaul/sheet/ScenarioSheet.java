package org.ionohaul.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.ionohaul.channel.Deciles;
import org.ionohaul.channel.End;
import org.ionohaul.channel.EndConditions;
import org.ionohaul.channel.GroundWave;
import org.ionohaul.channel.Interference;
import org.ionohaul.channel.PropagationPath;
import org.ionohaul.channel.Schedule;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.channel.Spells;
import org.ionohaul.link.FoldBack;
import org.ionohaul.link.Radio;
import org.ionohaul.rendering.SizeText;
import org.ionohaul.rendering.TextWrap;
import org.ionohaul.rendering.TimeText;
import org.ionohaul.scenario.Direction;
import org.ionohaul.scenario.Levels;
import org.ionohaul.scenario.Mode;
import org.ionohaul.scenario.PayloadFile;
import org.ionohaul.scenario.ReadSeries;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.StationDescription;
import org.ionohaul.scenario.Transfer;
import org.ionohaul.scenario.Understood;
import org.ionohaul.trial.TrialSkies;

/** What the program understood of a scenario, in plain units, so that its author sees whether that was meant. */
public final class ScenarioSheet {
    private static final int WIDTH = 80;
    private static final String INDENT = "  ";
    private static final double DAY_SECONDS = 86_400;

    /** So many trials' draws tell of an uncertain input what 8 of 10 trials meet. */
    private static final int DRAWN_TRIALS = 500;

    private final Scenario scenario;
    private final double sendClockSeconds;
    private final List<SkyConditions> skies;
    private final TrialSkies trials;

    /** Prepares the sheet. */
    public ScenarioSheet(Understood understood) {
        this.scenario = understood.scenario();
        this.sendClockSeconds = understood.sendClockSeconds();
        this.trials = new TrialSkies(scenario);
        this.skies =
                LongStream.range(0, DRAWN_TRIALS).mapToObj(trials::conditions).toList();
    }

    /** Returns the lines, of at most 80 columns. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, scenario.title());
        add(
                lines,
                "Send is pressed at " + clock(0) + "; watched for " + TimeText.given(scenario.horizonSeconds())
                        + ", until " + clock(scenario.horizonSeconds()) + ".");
        for (End end : End.values()) {
            lines.add("");
            addEnd(lines, end);
        }
        lines.add("");
        addSky(lines);
        for (Transfer transfer : scenario.transfers()) {
            lines.add("");
            addTransfer(lines, transfer);
        }
        lines.add("");
        add(
                lines,
                "Modes: "
                        + scenario.modes().stream()
                                .map(ScenarioSheet::modeWords)
                                .collect(Collectors.joining("; ")) + ".");
        addUncertain(lines);
        return lines;
    }

    private void addEnd(List<String> lines, End end) {
        StationDescription station = scenario.station(end);
        lines.add(station.name() + (end == End.NEAR ? " (dials)" : " (is called)"));
        List<Levels> levels = levels(end);
        if (!levels.isEmpty()) {
            addLine(
                    lines,
                    "hears",
                    drawn(levels, Levels::signalDbm, LevelText::of) + " of a steady carrier of "
                            + scenario.station(end.other()).name());
            addLine(lines, "noise", drawn(levels, Levels::noiseDbm, LevelText::of) + " in 3 kHz");
        }
        String snr = drawn(skies, it -> it.at(end).snrDb(), it -> decibels(it, "dB")) + " in 3 kHz";
        addLine(lines, "SNR", levels.isEmpty() ? snr + "; levels in dBm and S are not stated" : snr);
        scenario.sky().readings(end).ifPresent(it -> addReadings(lines, it));
        addNoise(lines, end);
        if (Double.isFinite(station.patienceSeconds())) {
            addLine(
                    lines,
                    "waits",
                    TimeText.given(station.patienceSeconds()) + ", until " + clock(station.patienceSeconds())
                            + ", then breaks off");
        }
        addLine(lines, "changes", "to receiving in " + milliseconds((double) turnNanos(station)));
        addRadio(lines, station.radio());
    }

    private void addReadings(List<String> lines, ReadSeries read) {
        addLine(
                lines,
                "readings",
                read.file() + ": " + read.levels().size() + " levels of "
                        + (read.isOfSignal() ? read.snr().isEmpty() ? "the signal" : "SNR" : "the noise")
                        + (read.isOfSignal() && !read.noise().isEmpty() ? " and noise" : "")
                        + ", averages over " + TimeText.given(read.averageSeconds()) + ", from "
                        + clock(read.firstSeconds()) + " to " + clock(read.lastSeconds()) + gap(read));
        if (read.isOfSignal()) {
            double low = read.levels().stream()
                    .mapToDouble(Schedule.Point::levelDb)
                    .min()
                    .orElseThrow();
            double high = read.levels().stream()
                    .mapToDouble(Schedule.Point::levelDb)
                    .max()
                    .orElseThrow();
            addLine(
                    lines,
                    "readings",
                    "lie between " + (read.snr().isEmpty() ? LevelText.of(low) : decibels(low, "dB")) + " and "
                            + (read.snr().isEmpty() ? LevelText.of(high) : decibels(high, "dB"))
                            + "; above is the level when send is pressed");
        }
    }

    private String gap(ReadSeries read) {
        return read.longestGap()
                .map(it -> ", " + TimeText.given(read.usualSeconds()) + " apart, at most "
                        + TimeText.given(it.seconds()) + " (from " + clock(it.fromSeconds()) + ")")
                .orElse("");
    }

    private static void addRadio(List<String> lines, Radio radio) {
        if (radio.busyDetectionNanos() > 0) {
            addLine(
                    lines,
                    "notices",
                    "others after " + plain(1e-9 * (double) radio.busyDetectionNanos()) + " s of them");
        }
        FoldBack foldBack = radio.foldBack();
        if (foldBack.dropDb() > 0) {
            addLine(
                    lines,
                    "folds",
                    "its power back by " + decibels(foldBack.dropDb(), "dB") + " once keyed for "
                            + TimeText.given(1e-9 * foldBack.afterNanos()) + "; cool again after "
                            + TimeText.given(1e-9 * foldBack.coolingNanos()) + " of receiving");
        }
    }

    private void addNoise(List<String> lines, End end) {
        ToDoubleFunction<SkyConditions> rise = it -> it.at(end).noiseRiseDb().levelDb(scenario.horizonSeconds())
                - it.at(end).noiseRiseDb().levelDb(0);
        if (varies(skies, rise) || rise.applyAsDouble(skies.get(0)) != 0) {
            addLine(
                    lines,
                    "noise",
                    drawn(skies, rise, it -> decibels(it, "dB")) + " more at the horizon than at " + clock(0));
        }
        EndConditions conditions = skies.get(0).at(end);
        if (conditions.impulses().probability() > 0) {
            addLine(
                    lines,
                    "impulses",
                    percent(conditions.impulses().probability()) + " of the time, "
                            + decibels(conditions.impulses().riseDb(), "dB") + " over the noise");
        }
        if (conditions.atmospherics().isUneven()) {
            addLine(
                    lines,
                    "static",
                    "Vd " + decibels(conditions.atmospherics().voltageDeviationDb(), "dB")
                            + " in 3 kHz; the noise stated is its mean");
        }
        if (conditions.gainControl().isLimited()) {
            addLine(
                    lines,
                    "receiver",
                    "hears " + decibels(conditions.gainControl().rangeDb(), "dB") + " below the strongest signal");
        }
        for (int population = 0; population < conditions.interference().size(); population++) {
            addLine(lines, "others", others(end, population));
        }
    }

    private String others(End end, int population) {
        Function<SkyConditions, Interference> which =
                it -> it.at(end).interference().get(population);
        List<Interference> drawn = skies.stream().map(which).toList();
        List<Levels> levels = levels(end);
        List<Double> dbm = IntStream.range(0, levels.size())
                .mapToObj(i -> drawn.get(i).medianDb() + levels.get(i).noiseDbm())
                .toList();
        return drawn(drawn, Interference::visitsPerHour, ScenarioSheet::plain) + " visits an hour of "
                + drawn(drawn, Interference::visitSeconds, TimeText::given) + ", "
                + (dbm.isEmpty() ? "" : drawn(dbm, ScenarioSheet::rounded, LevelText::of) + ", ")
                + drawn(drawn, Interference::medianDb, it -> decibels(it, "dB")) + " over the noise";
    }

    /** Returns the levels at an end in each of the trials looked at; none if the scenario states just their ratio. */
    private List<Levels> levels(End end) {
        return LongStream.range(0, DRAWN_TRIALS)
                .mapToObj(it -> trials.levels(end, it))
                .flatMap(Optional::stream)
                .toList();
    }

    private void addSky(List<String> lines) {
        lines.add("Between them");
        addLine(
                lines,
                "distance",
                SizeText.grouped(scenario.distanceMetres() / 1000) + " km, "
                        + milliseconds((double) scenario.propagationNanos()) + " each way");
        addPathLoss(lines);
        IntStream.range(0, skies.get(0).paths().size()).forEach(i -> {
            ToDoubleFunction<SkyConditions> delay = it -> path(it, i).delaySeconds();
            addLine(
                    lines,
                    "path " + (i + 1),
                    "after " + drawn(skies, delay, it -> milliseconds(1e9 * it)) + ", "
                            + drawn(skies, it -> path(it, i).powerDb(), it -> decibels(it, "dB")) + ", Doppler spread "
                            + drawn(skies, it -> path(it, i).dopplerSpreadHz(), it -> plain(it) + " Hz"));
        });
        addTuning(lines);
        addSkyWave(lines);
        addGroundWave(lines);
        addMeasured(lines);
        ToDoubleFunction<SkyConditions> trend = it ->
                it.trendDb().levelDb(scenario.horizonSeconds()) - it.trendDb().levelDb(0);
        if (varies(skies, trend) || trend.applyAsDouble(skies.get(0)) != 0) {
            addLine(
                    lines,
                    "trend",
                    drawn(skies, trend, it -> decibels(it, "dB")) + " from " + clock(0) + " to the horizon");
        }
    }

    private void addTuning(List<String> lines) {
        ToDoubleFunction<SkyConditions> atSend = it -> it.frequencyErrorHz(0);
        ToDoubleFunction<SkyConditions> atHorizon =
                it -> it.frequencyErrorHz(Math.round(1e9 * scenario.horizonSeconds()));
        if (skies.stream().allMatch(it -> atSend.applyAsDouble(it) == 0 && atHorizon.applyAsDouble(it) == 0)) {
            return;
        }
        addLine(
                lines,
                "tuning",
                "apart by " + drawn(skies, atSend, ScenarioSheet::hertz) + " when send is pressed, by "
                        + drawn(skies, atHorizon, ScenarioSheet::hertz) + " at the horizon; nothing is lost up to "
                        + scenario.modes().stream()
                                .map(it -> hertz(toleranceHz(it)) + " with " + it.title())
                                .collect(Collectors.joining(", ")));
    }

    private static double toleranceHz(Mode mode) {
        return mode.dataRates().stream()
                .mapToDouble(it -> it.frame().frequencyToleranceHz())
                .min()
                .orElseThrow();
    }

    private static String hertz(double frequency) {
        return plain(Math.rint(10 * frequency) / 10) + " Hz";
    }

    private void addSkyWave(List<String> lines) {
        if (scenario.sky().uncertainKeys().contains("sky.day-to-day")) {
            addLine(lines, "day", "to day the level differs; what the ends hear and their SNR count it");
        }
        addSpells(lines, "drop-outs", skies.get(0).dropOuts(), " down");
        addSpells(lines, "sporadic E", skies.get(0).sporadicE(), " up");
    }

    private static void addSpells(List<String> lines, String label, Spells spells, String way) {
        if (spells.changeDb() != 0) {
            addLine(
                    lines,
                    label,
                    TimeText.given(spells.betweenSeconds()) + " apart on average, for "
                            + TimeText.given(spells.lengthSeconds())
                            + " on average, " + percent(spells.share()) + " of the time: the sky wave is "
                            + decibels(Math.abs(spells.changeDb()), "dB") + way);
        }
    }

    private void addGroundWave(List<String> lines) {
        List<GroundWave> drawn = skies.stream()
                .map(SkyConditions::groundWave)
                .flatMap(Optional::stream)
                .toList();
        if (drawn.isEmpty()) {
            return;
        }
        addLine(
                lines,
                "ground wave",
                milliseconds(1e9 * drawn.get(0).leadSeconds()) + " before the sky wave, "
                        + drawn(drawn, GroundWave::levelDb, it -> decibels(it, "dB")) + " relative to it, steady");
        for (End end : End.values()) {
            List<Double> snr = overSkyWave(drawn, i -> skies.get(i).at(end).snrDb());
            List<Levels> levels = levels(end);
            List<Double> dbm = levels.isEmpty()
                    ? List.of()
                    : overSkyWave(drawn, i -> levels.get(i).signalDbm());
            addLine(
                    lines,
                    "ground wave",
                    "at " + scenario.station(end).name() + ": "
                            + (dbm.isEmpty() ? "" : drawn(dbm, ScenarioSheet::rounded, LevelText::of) + ", ")
                            + "SNR " + drawn(snr, ScenarioSheet::rounded, it -> decibels(it, "dB")));
        }
    }

    private static List<Double> overSkyWave(List<GroundWave> drawn, IntToDoubleFunction skyWave) {
        return IntStream.range(0, drawn.size())
                .mapToObj(i -> skyWave.applyAsDouble(i) + drawn.get(i).levelDb())
                .toList();
    }

    private void addPathLoss(List<String> lines) {
        List<Levels> near = levels(End.NEAR);
        List<Levels> far = levels(End.FAR);
        if (near.isEmpty() || far.isEmpty() || !(varies(near, Levels::signalDbm) && varies(far, Levels::signalDbm))) {
            return;
        }
        List<Double> differences = IntStream.range(0, near.size())
                .mapToObj(i -> near.get(i).signalDbm() - far.get(i).signalDbm())
                .toList();
        addLine(
                lines,
                "signals",
                varies(differences, ScenarioSheet::rounded)
                        ? "at the two ends are drawn apart from each other"
                        : "at both ends are drawn from one path loss, the same both ways");
    }

    /** Says what becomes of the stated trend where an end's level was measured. */
    private void addMeasured(List<String> lines) {
        for (End end : End.values()) {
            if (skies.get(0).at(end).measured().isPresent()) {
                boolean isOwn = scenario.sky()
                        .readings(end)
                        .filter(ReadSeries::isOfSignal)
                        .isPresent();
                addLine(
                        lines,
                        "level",
                        "at " + scenario.station(end).name() + " goes as it was read "
                                + (isOwn
                                        ? "there"
                                        : "at " + scenario.station(end.other()).name())
                                + "; what changes faster is simulated");
            }
        }
    }

    private void addTransfer(List<String> lines, Transfer transfer) {
        lines.add("Transfer " + transfer.name());
        for (Direction direction : transfer.directions()) {
            addLine(
                    lines,
                    direction == Direction.UPLOAD ? "upload" : "download",
                    "from "
                            + scenario.station(direction.sender()).name() + " to "
                            + scenario.station(direction.receiver()).name());
        }
        for (PayloadFile file : transfer.files()) {
            addLine(lines, "file", file.name() + ": " + SizeText.grouped((double) file.bytes()) + " bytes on the air");
        }
        for (double deadline : transfer.deadlinesSeconds()) {
            addLine(lines, "deadline", clock(deadline) + ", " + TimeText.given(deadline) + " after pressing send");
        }
    }

    private void addUncertain(List<String> lines) {
        List<String> keys = scenario.sky().uncertainKeys();
        if (!keys.isEmpty()) {
            lines.add("");
            add(
                    lines,
                    "Uncertain, drawn anew for each trial: " + String.join(", ", keys)
                            + ". Where one counts, its middle is shown and, in brackets, what 8 of 10 trials meet.");
        }
    }

    private static PropagationPath path(SkyConditions sky, int index) {
        return sky.paths().get(index);
    }

    private static long turnNanos(StationDescription station) {
        return station.radio().times().hangNanos()
                + station.radio().times().relayNanos()
                + station.radio().times().recoveryNanos();
    }

    private static String modeWords(Mode mode) {
        return mode.title() + " ("
                + (mode.dataRates().size() == 1
                        ? "1 data rate"
                        : mode.dataRates().size() + " data rates") + ", "
                + plain(mode.emission().bandwidthHz()) + " Hz"
                + (mode.arq().scheme().answersEach() ? ", answers of one word that may be taken for the other" : "")
                + ")";
    }

    private static <T> boolean varies(List<T> drawn, ToDoubleFunction<T> what) {
        return drawn.stream().mapToDouble(what).distinct().count() > 1;
    }

    private static <T> String drawn(List<T> drawn, ToDoubleFunction<T> what, DoubleFunction<String> words) {
        Deciles values = Deciles.of(drawn.stream().mapToDouble(what).toArray());
        String middle = words.apply(values.median());
        return varies(drawn, what)
                ? middle + " (" + words.apply(values.low()) + " to " + words.apply(values.high()) + ")"
                : middle;
    }

    /** Levels that differ by less than this are the same but for rounding. */
    private static double rounded(double level) {
        return Math.rint(1e6 * level) / 1e6;
    }

    private static String decibels(double level, String unit) {
        return plain(Math.rint(10 * level) / 10) + " " + unit;
    }

    private static String milliseconds(double nanos) {
        return plain(Math.rint(nanos / 1e5) / 10) + " ms";
    }

    private static String percent(double share) {
        return plain(Math.rint(1000 * share) / 10) + " %";
    }

    private static String plain(double number) {
        return String.format(Locale.ROOT, "%,.2f", number + 0.0).replaceAll("\\.?0+$", "");
    }

    private String clock(double afterSendSeconds) {
        double atSeconds = sendClockSeconds + afterSendSeconds;
        long minutes = Math.floorMod((long) Math.floor(atSeconds / 60), 24 * 60);
        String nextDay = atSeconds >= DAY_SECONDS ? " the next day" : "";
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60) + nextDay;
    }

    private static void add(List<String> lines, String text) {
        lines.addAll(TextWrap.lines(text, "", WIDTH));
    }

    private static void addLine(List<String> lines, String label, String text) {
        lines.addAll(TextWrap.lines(label + " " + text, INDENT, WIDTH));
    }
}
