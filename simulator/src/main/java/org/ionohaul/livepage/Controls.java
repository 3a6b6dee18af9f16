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
import org.ionohaul.scenario.KeyName;
import org.ionohaul.scenario.Scenario;
import org.ionohaul.scenario.ScenarioText;

/**
 * The quantities of a scenario that can be changed: of those that matter most, whichever its file states.
 *
 * @param groups with headings, in the order of the page
 * @param cases what is sent and which way, in the scenario's order
 */
record Controls(List<Group> groups, List<String> cases) {
    /** Keys of an end; a star stands for each number of a repeated heading. */
    private static final List<String> END = List.of(
            "snr",
            "signal",
            "noise",
            "noise-environment",
            "power",
            "antenna-gain",
            "patience",
            "congestion",
            "impulses.share",
            "impulses.rise",
            "atmospherics.vd",
            "interference.*.visits",
            "interference.*.median",
            "tuning.offset");

    private static final List<String> SKY = List.of(
            "distance",
            "sky.condition",
            "sky.path.*.delay",
            "sky.path.*.doppler-spread",
            "sky.path.*.power",
            "sky.frequency",
            "sky.losses",
            "sky.day-to-day",
            "sky.slow-variation.deviation",
            "sky.ground-wave.level",
            "sky.drop-outs.between");

    private static final List<String> SENT =
            List.of("transfer.*.files.*.size", "transfer.*.files.*.compression", "transfer.*.deadlines");

    private static final List<String> HOW = List.of("trials", "seed");

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
        Offer offer = new Offer(scenario, text);
        add(groups, "What is sent, by when", offer.all(SENT, ""));
        add(groups, "At " + scenario.near().name(), offer.all(END, "near."));
        add(groups, "At " + scenario.far().name(), offer.all(END, "far."));
        add(groups, "Between them", offer.all(SKY, ""));
        add(
                groups,
                "How it is simulated",
                Stream.concat(offer.modes(modesInFolder), offer.all(HOW, "").map(Controls::alike)));
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

    private static Control alike(Control it) {
        return new Control(it.key(), it.label(), it.meaning(), it.written(), it.choices(), true);
    }

    /** What a file states. */
    private record Offer(Scenario scenario, ScenarioText text) {
        Stream<Control> all(List<String> keys, String prefix) {
            return keys.stream().flatMap(it -> counted(prefix + it)).flatMap(it -> control(it).stream());
        }

        Stream<Control> modes(List<String> inFolder) {
            Set<String> names = new LinkedHashSet<>(inFolder);
            scenario.modes().forEach(it -> names.add(it.name()));
            return control("modes").stream()
                    .map(it -> new Control(
                            it.key(),
                            it.label(),
                            it.meaning(),
                            it.written(),
                            names.stream().sorted().toList(),
                            true));
        }

        private static Stream<String> counted(String key) {
            return key.contains("*")
                    ? Stream.iterate(1, i -> i <= MOST_REPEATED, i -> i + 1)
                            .flatMap(i -> counted(key.replaceFirst("\\*", Integer.toString(i))))
                    : Stream.of(key);
        }

        private Optional<Control> control(String key) {
            return text.written(key)
                    .flatMap(written -> KeyGuide.of(key)
                            .map(it -> new Control(
                                    key, label(key), it.meaning(), named(written, it), it.choices(), false)));
        }

        /** Which end it is stands above. */
        private String label(String key) {
            KeyName name = KeyName.of(scenario, key);
            String label = key.startsWith("near.") || key.startsWith("far.") ? name.quantity() : name.words();
            return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
        }
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
