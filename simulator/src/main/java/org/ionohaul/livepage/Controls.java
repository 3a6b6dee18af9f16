package org.ionohaul.livepage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ionohaul.report.CaseName;
import org.ionohaul.scenario.KeyGuide;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioText;

/**
 * The quantities of a scenario that can be changed: of those that matter most, whichever its file states.
 *
 * @param groups with headings, in the order of the page
 * @param cases what is sent and which way, in the scenario's order
 */
record Controls(List<Group> groups, List<String> cases) {
    /** Keys of an end, with what they are called. */
    private static final List<Named> END = List.of(
            new Named("snr", "SNR"),
            new Named("signal", "Signal"),
            new Named("noise", "Noise"),
            new Named("noise-environment", "Surroundings"),
            new Named("power", "Power"),
            new Named("antenna-gain", "Antenna"),
            new Named("patience", "Patience"),
            new Named("congestion", "Crowding"),
            new Named("impulses.share", "Impulses, share of time"),
            new Named("impulses.rise", "Impulses, rise"),
            new Named("atmospherics.vd", "Static"),
            new Named("interference.*.visits", "Other stations, visits"),
            new Named("interference.*.median", "Other stations, level"),
            new Named("tuning.offset", "Off frequency"));

    private static final List<Named> SKY = List.of(
            new Named("distance", "Length of the path"),
            new Named("sky.condition", "Kind of path"),
            new Named("sky.path.*.delay", "Path, delay"),
            new Named("sky.path.*.doppler-spread", "Path, spread"),
            new Named("sky.path.*.power", "Path, power"),
            new Named("sky.frequency", "Frequency"),
            new Named("sky.losses", "Losses"),
            new Named("sky.day-to-day", "Day to day"),
            new Named("sky.slow-variation.deviation", "Slow variation"),
            new Named("sky.ground-wave.level", "Ground wave"),
            new Named("sky.drop-outs.between", "Between drop-outs"));

    private static final List<Named> FILE = List.of(new Named("size", "size"), new Named("compression", "compression"));

    private static final List<Named> HOW = List.of(new Named("trials", "Trials"), new Named("seed", "Seed"));

    /** More than that of a repeated heading no page has room for. */
    private static final int MOST_REPEATED = 8;

    /**
     * Controls that stand together.
     *
     * @param heading what they are about
     * @param controls at least one
     */
    record Group(String heading, List<Control> controls) {
        Group {
            controls = List.copyOf(controls);
        }
    }

    /** A key, with a star for each number of a repeated heading, and what it is called. */
    private record Named(String key, String label) {}

    Controls {
        groups = List.copyOf(groups);
        cases = List.copyOf(cases);
    }

    /**
     * Returns the controls of a scenario.
     *
     * @param text its file's
     * @param modesInFolder the modes that lie beside it
     */
    static Controls of(Scenario scenario, ScenarioText text, List<String> modesInFolder) {
        List<Group> groups = new ArrayList<>();
        add(groups, "What is sent, by when", sent(scenario, text));
        add(groups, "At " + scenario.near().name(), all(END, "near.", text));
        add(groups, "At " + scenario.far().name(), all(END, "far.", text));
        add(groups, "Between them", all(SKY, "", text));
        add(
                groups,
                "How it is simulated",
                Stream.concat(
                        modes(scenario, text, modesInFolder), all(HOW, "", text).map(Controls::alike)));
        return new Controls(
                groups,
                CaseName.all(scenario, List.of()).stream()
                        .map(CaseName::heading)
                        .toList());
    }

    private static void add(List<Group> groups, String heading, Stream<Control> controls) {
        List<Control> all = controls.toList();
        if (!all.isEmpty()) {
            groups.add(new Group(heading, all));
        }
    }

    private static Stream<Control> sent(Scenario scenario, ScenarioText text) {
        return Stream.iterate(
                        1,
                        i -> i <= Math.min(MOST_REPEATED, scenario.transfers().size()),
                        i -> i + 1)
                .flatMap(i -> {
                    String prefix = "transfer." + i + ".";
                    var transfer = scenario.transfers().get(i - 1);
                    Stream<Control> files = Stream.iterate(
                                    1,
                                    j -> j
                                            <= Math.min(
                                                    MOST_REPEATED,
                                                    transfer.files().size()),
                                    j -> j + 1)
                            .flatMap(j -> all(FILE, prefix + "files." + j + ".", text)
                                    .map(it ->
                                            called(transfer.files().get(j - 1).name() + ", " + it.label(), it)));
                    return Stream.concat(
                            files, control(prefix + "deadlines", "Deadlines, " + transfer.name(), text).stream());
                });
    }

    private static Control called(String label, Control it) {
        return new Control(it.key(), label, it.meaning(), it.written(), it.choices(), it.isShared());
    }

    private static Control alike(Control it) {
        return new Control(it.key(), it.label(), it.meaning(), it.written(), it.choices(), true);
    }

    private static Stream<Control> modes(Scenario scenario, ScenarioText text, List<String> inFolder) {
        Set<String> names = new LinkedHashSet<>(inFolder);
        scenario.modes().forEach(it -> names.add(it.name()));
        return control("modes", "Modes", text).stream()
                .map(it -> new Control(
                        it.key(),
                        it.label(),
                        it.meaning(),
                        it.written(),
                        names.stream().sorted().toList(),
                        true));
    }

    private static Stream<Control> all(List<Named> keys, String prefix, ScenarioText text) {
        return keys.stream().flatMap(it -> counted(new Named(prefix + it.key(), it.label()), text));
    }

    private static Stream<Control> counted(Named named, ScenarioText text) {
        if (!named.key().contains("*")) {
            return control(named.key(), named.label(), text).stream();
        }
        return Stream.iterate(1, i -> i <= MOST_REPEATED, i -> i + 1)
                .flatMap(i -> control(
                        named.key().replace("*", Integer.toString(i)),
                        named.label().replaceFirst(",", " " + i + ","),
                        text)
                        .stream());
    }

    private static Optional<Control> control(String key, String label, ScenarioText text) {
        return text.written(key)
                .flatMap(written -> KeyGuide.of(key)
                        .map(it -> new Control(key, label, it.meaning(), named(written, it), it.choices(), false)));
    }

    /** Names of a choice may be written with spaces and capitals. */
    private static String named(String written, KeyGuide guide) {
        return guide.choices().isEmpty()
                ? written
                : written.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    /** Returns the keys of what both settings have alike. */
    Stream<String> shared() {
        return all().filter(Control::isShared).map(Control::key);
    }

    private Stream<Control> all() {
        return groups.stream().flatMap(it -> it.controls().stream());
    }

    /** Returns the controls by key. */
    Map<String, Control> byKey() {
        return all().collect(Collectors.toUnmodifiableMap(Control::key, it -> it));
    }
}
