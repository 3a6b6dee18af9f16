package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.ionohaul.net.Arrivals;
import org.ionohaul.net.Discipline;
import org.ionohaul.net.GatewayRules;
import org.ionohaul.net.MessageKind;
import org.ionohaul.net.NetRules;
import org.ionohaul.net.OperatorRules;

/** Reads a file that describes a net, and the mode file that it names, and checks everything they say. */
public final class NetReader {
    private static final double LEAST_BYTES = 1;
    private static final double MOST_BYTES = 1e6;
    private static final double MOST_MESSAGES = 20_000;

    /** Some 70 bytes each are kept until the answer is worked out. */
    private static final double MOST_OF_ALL_TRIALS = 5_000_000;

    private final Notes notes = new Notes();
    private final SourceFiles files;
    private final Path file;
    private final Map<String, String> overrides;

    private NetReader(SourceFiles files, Path file, Map<String, String> overrides) {
        this.files = files;
        this.file = file;
        this.overrides = overrides;
    }

    /** What was read, and what is odd about it. */
    public record Read(NetScenario scenario, List<Warning> warnings) {
        /** Copies the warnings. */
        public Read {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Reads a net.
     *
     * @param files where the texts come from
     * @param file its own
     * @param overrides values that replace those of the files, by full key
     * @throws ScenarioProblems if anything in it or its mode is wrong, with all that is
     */
    public static Read read(SourceFiles files, Path file, Map<String, String> overrides) throws ScenarioProblems {
        NetReader reader = new NetReader(files, file, overrides);
        try {
            NetScenario scenario = reader.scenario();
            if (reader.notes.problems().isEmpty()) {
                return new Read(scenario, reader.notes.warnings());
            }
        } catch (NoStandIn e) {
            if (reader.notes.problems().isEmpty()) {
                throw new IllegalStateException(e);
            }
        }
        throw new ScenarioProblems(reader.notes.problems(), reader.notes.warnings());
    }

    /** Returns whether a file describes a net rather than a pair of stations, as far as the names of its keys tell. */
    public static boolean isNet(SourceFiles files, Path file) {
        return Document.open(file, files, Map.of(), "", new Notes()).isRather(ScenarioFormat.TOP, NetFormat.TOP);
    }

    /**
     * Returns where a net comes from, for the record: its own file and that of its mode.
     *
     * @throws IOException if a file has gone since it was read
     */
    public static Provenance provenance(SourceFiles files, Path file, Map<String, String> overrides)
            throws IOException {
        NetReader reader = new NetReader(files, file, overrides);
        List<InputFile> inputs = new ArrayList<>();
        inputs.add(new InputFile(TomlFolder.nameOf(file) + ".toml", files.text(file)));
        for (Path mode : reader.modeFiles().filesNamedIn(reader.document().top(NetFormat.TOP))) {
            inputs.add(new InputFile("modes/" + TomlFolder.nameOf(mode) + ".toml", files.text(mode)));
        }
        return new Provenance(Provenance.programVersion(), inputs, overrides);
    }

    private Document document() {
        Map<String, String> own = new TreeMap<>(overrides);
        own.keySet().removeIf(key -> key.startsWith(ModeFiles.PREFIX));
        return Document.open(file, files, own, "", notes)
                .unlessRather(
                        NetFormat.TOP,
                        ScenarioFormat.TOP,
                        "describes a pair of stations, not a net",
                        "ionohaul study " + file + " says how long its files take")
                .unlessRather(
                        NetFormat.TOP,
                        ModeFormat.TOP,
                        "is a mode file, not a net",
                        "ionohaul mode " + file + " shows what the mode can do; a net names it under modes");
    }

    /** Modes lie in the folder of that name beside the file or, where there is none, beside its own folder. */
    private ModeFiles modeFiles() {
        TomlFolder beside = TomlFolder.ofModesBeside(file, files);
        Optional<Path> folder = Optional.ofNullable(
                        file.toAbsolutePath().normalize().getParent())
                .filter(it -> beside.names().isEmpty());
        return new ModeFiles(
                folder.map(it -> TomlFolder.ofModesBeside(it, files)).orElse(beside), overrides, notes);
    }

    private NetScenario scenario() {
        Document document = document();
        Section top = document.top(NetFormat.TOP);
        Section gateway = top.part(NetFormat.GATEWAY);
        Section sky = top.part(ScenarioFormat.SKY);
        gateway.checkParts();
        List<Mode> modes = modeFiles().namedIn(top);
        if (modes.size() > 1) {
            top.problem(
                    ScenarioFormat.MODES,
                    "names " + modes.size() + " modes, but all stations of a net work the same one",
                    "name one; --set modes=\"[...]\" tries another");
        }
        Section operators = top.partAsIs(NetFormat.OPERATORS);
        List<Section> sections = top.someParts(NetFormat.GROUP);
        List<StationGroup> groups = new ArrayList<>();
        for (Section section : sections) {
            groups.add(group(section, gateway, sky, operators, modes, top, document));
        }
        refuseNamesTwice(sections, groups);
        int stations = groups.stream().mapToInt(StationGroup::count).sum();
        if (stations > NetRules.MOST_STATIONS) {
            top.problem(
                    "has " + stations + " stations; at most 500 can be simulated", "lower the counts of the groups");
        }
        NetScenario scenario = top.build(() -> new NetScenario(
                TomlFolder.nameOf(file),
                top.get(ScenarioFormat.TITLE),
                top.get(ScenarioFormat.SEED),
                top.get(ScenarioFormat.TRIALS),
                top.get(ScenarioFormat.HORIZON),
                top.get(ScenarioFormat.CLOCK),
                top.get(NetFormat.WARM_UP),
                groups,
                gateway.build(() -> gatewayRules(gateway)),
                operator(gateway.partAsIs(NetFormat.OPERATORS).inheriting(operators)),
                discipline(top.partAsIs(NetFormat.DISCIPLINE)),
                audibility(top, groups, stations)));
        document.refuseUnusedOverrides();
        refuseExcess(top, scenario);
        return scenario;
    }

    private StationGroup group(
            Section section,
            Section gateway,
            Section sky,
            Section operators,
            List<Mode> modes,
            Section top,
            Document document) {
        Section far = section.partAsIs(NetFormat.AT_GATEWAY).inheriting(gateway);
        SkyReader reader = new SkyReader(
                top.get(ScenarioFormat.CLOCK), top.get(ScenarioFormat.HORIZON), top.get(ScenarioFormat.DISTANCE));
        DescribedSky described = reader.sky(
                sky, section, far, new SeriesReader(files, file, notes, top.get(ScenarioFormat.CLOCK)), document);
        List<MessageKind> kinds = section.someParts(NetFormat.MESSAGE).stream()
                .map(it -> kind(it, top))
                .toList();
        Scenario pair = top.build(() -> new Scenario(
                TomlFolder.nameOf(file),
                top.get(ScenarioFormat.TITLE),
                top.get(ScenarioFormat.SEED),
                top.get(ScenarioFormat.TRIALS),
                top.get(ScenarioFormat.HORIZON),
                top.get(ScenarioFormat.DISTANCE),
                List.of(),
                modes,
                station(section),
                station(gateway),
                described));
        OperatorRules operator = operator(section.partAsIs(NetFormat.OPERATORS).inheriting(operators));
        return section.build(() -> new StationGroup(section.get(NetFormat.COUNT), pair, operator, kinds));
    }

    private static StationDescription station(Section end) {
        return ScenarioReader.station(end);
    }

    private MessageKind kind(Section message, Section top) {
        double load = top.get(NetFormat.LOAD);
        double clockSeconds = top.get(ScenarioFormat.CLOCK);
        Uncertain size = message.get(NetFormat.MESSAGE_SIZE);
        if (!(size.quantile(1e-9) >= LEAST_BYTES && size.quantile(1 - 1e-9) <= MOST_BYTES)) {
            message.problem(
                    NetFormat.MESSAGE_SIZE,
                    "can come out below 1 B or above 1 MB",
                    "every size that can be drawn must be possible: narrow the distribution");
        }
        Arrivals arrivals = arrivals(message, load, clockSeconds);
        MessageKind kind = message.build(() -> new MessageKind(
                message.get(NetFormat.MESSAGE_NAME),
                message.get(NetFormat.DIRECTION) == Direction.DOWNLOAD,
                message.get(NetFormat.PRIORITY),
                size::quantile,
                arrivals,
                message.find(NetFormat.MESSAGE_DEADLINES).orElse(List.of()).stream()
                        .map(Deadline::seconds)
                        .toList()));
        refuseDeadlines(message, top);
        return kind;
    }

    private static void refuseDeadlines(Section message, Section top) {
        List<Deadline> deadlines = message.find(NetFormat.MESSAGE_DEADLINES).orElse(List.of());
        double watched = top.get(ScenarioFormat.HORIZON) - top.get(NetFormat.WARM_UP);
        if (watched <= 0) {
            return;
        }
        for (int i = 0; i < deadlines.size(); i++) {
            if (deadlines.get(i).isClock()) {
                message.problemOfEntry(
                        NetFormat.MESSAGE_DEADLINES,
                        i,
                        "is a time of day, but messages are written at any",
                        "write how long after writing it is, such as \"20 min\"");
            } else if (deadlines.get(i).seconds() > watched) {
                message.problemOfEntry(
                        NetFormat.MESSAGE_DEADLINES,
                        i,
                        "is longer than the time that counts: no message can be watched for so long",
                        "raise the horizon or take the deadline out");
            }
        }
    }

    private static Arrivals arrivals(Section message, double load, double clockSeconds) {
        List<Key<?>> stated =
                new ArrayList<>(List.of(NetFormat.RATE, NetFormat.TIMES, NetFormat.EVENT, NetFormat.PAUSE_AFTER));
        stated.removeIf(it -> !message.has(it));
        if (stated.isEmpty() && !message.mayComplain()) {
            return new Arrivals.Poisson(1);
        }
        if (stated.size() != 1) {
            message.problem(
                    stated.isEmpty()
                            ? "does not say when such messages are written"
                            : "says in two ways when they are written",
                    "state one of rate, at, after and pause");
            return new Arrivals.Poisson(1);
        }
        if (message.has(NetFormat.RATE)) {
            return message.build(() -> new Arrivals.Poisson(load * message.get(NetFormat.RATE)));
        } else if (message.has(NetFormat.TIMES)) {
            return message.build(() -> new Arrivals.Schedule(message.get(NetFormat.TIMES).stream()
                    .map(it -> it.afterSend(clockSeconds))
                    .toList()));
        } else if (message.has(NetFormat.EVENT)) {
            return message.build(() -> new Arrivals.AfterEvent(
                    message.get(NetFormat.EVENT).afterSend(clockSeconds), message.get(NetFormat.WITHIN)));
        }
        return message.build(() -> new Arrivals.WhenThrough(message.get(NetFormat.PAUSE_AFTER) / load));
    }

    private static OperatorRules operator(Section section) {
        return section.build(() -> new OperatorRules(
                section.get(NetFormat.LISTENS),
                section.get(NetFormat.HOLD_OFF),
                section.get(NetFormat.REDIAL),
                section.get(NetFormat.REDIAL_GROWTH),
                section.get(NetFormat.MOST_CALLS),
                section.find(NetFormat.MESSAGE_PATIENCE).orElse(Long.MAX_VALUE),
                section.find(NetFormat.CALLS_IN_A_ROW).map(OptionalInt::of).orElseGet(OptionalInt::empty),
                section.get(NetFormat.CHANGES_CHANNEL)));
    }

    private static GatewayRules gatewayRules(Section gateway) {
        return new GatewayRules(
                gateway.get(NetFormat.CHANNELS),
                gateway.get(NetFormat.RADIO_EACH),
                gateway.get(NetFormat.DWELL),
                gateway.find(NetFormat.SESSION_LIMIT).orElse(Long.MAX_VALUE),
                gateway.find(NetFormat.IDLE_LIMIT).orElse(Long.MAX_VALUE),
                gateway.get(NetFormat.CALLS));
    }

    private static Discipline discipline(Section section) {
        return section.build(() -> new Discipline(
                section.get(NetFormat.ACCESS),
                section.get(NetFormat.ORDER),
                section.get(NetFormat.SLOT),
                section.get(NetFormat.MESSAGES_A_CALL)));
    }

    private static NetScenario.Audibilities audibility(Section top, List<StationGroup> groups, int stations) {
        List<String> names = groups.stream().map(StationGroup::name).toList();
        Map<List<Integer>, Uncertain> between = new HashMap<>();
        for (Section section : top.parts(NetFormat.AUDIBLE)) {
            List<String> two = section.get(NetFormat.BETWEEN);
            Uncertain snr = section.get(NetFormat.BETWEEN_SNR);
            if (two.size() != 2) {
                section.problem(NetFormat.BETWEEN, "must name two groups", "write the same name twice for one group");
            } else if (!names.containsAll(two)) {
                String unknown = two.stream()
                        .filter(it -> !names.contains(it))
                        .findFirst()
                        .orElseThrow();
                section.problem(
                        NetFormat.BETWEEN, "there is no group \"" + unknown + "\"", Spelling.advice(unknown, names));
            } else {
                int one = names.indexOf(two.get(0));
                int other = names.indexOf(two.get(1));
                between.put(List.of(Math.min(one, other), Math.max(one, other)), snr);
            }
        }
        boolean isNeeded = stations > 1 && between.size() < groups.size() * (groups.size() + 1) / 2;
        Uncertain all =
                isNeeded || top.has(NetFormat.AUDIBILITY) ? top.get(NetFormat.AUDIBILITY) : new Uncertain.Known(0);
        return new NetScenario.Audibilities(all, between);
    }

    private static void refuseNamesTwice(List<Section> sections, List<StationGroup> groups) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < groups.size(); i++) {
            String name = groups.get(i).name().strip().toLowerCase(Locale.ROOT);
            if (!names.add(name) && sections.get(i).isReadable(ScenarioFormat.END_NAME)) {
                sections.get(i)
                        .problem(
                                ScenarioFormat.END_NAME,
                                "\"" + groups.get(i).name() + "\" is the name of an earlier group",
                                "give each group its own name: the answers tell them apart by it");
            }
        }
    }

    /** Rates that would fill the memory are more likely a slip. */
    private static void refuseExcess(Section top, NetScenario scenario) {
        double messages = 0;
        for (StationGroup group : scenario.groups()) {
            for (MessageKind kind : group.kinds()) {
                messages += group.count() * expected(kind.arrivals(), scenario.horizonSeconds());
            }
        }
        if (messages > MOST_MESSAGES) {
            top.problem(
                    NetFormat.LOAD,
                    "gives some " + String.format(Locale.ROOT, "%,d", Math.round(messages))
                            + " messages a trial; at most 20,000 can be simulated",
                    "lower the rates, the counts or the horizon");
        } else if (messages * scenario.trials() > MOST_OF_ALL_TRIALS) {
            top.problem(
                    ScenarioFormat.TRIALS,
                    "gives some " + String.format(Locale.ROOT, "%,d", Math.round(messages * scenario.trials()))
                            + " messages over all trials; at most 5,000,000 can be kept",
                    "run fewer trials: of so many messages fewer tell as much");
        }
    }

    private static double expected(Arrivals arrivals, double seconds) {
        if (arrivals instanceof Arrivals.Poisson poisson) {
            return poisson.perHour() * seconds / 3600;
        } else if (arrivals instanceof Arrivals.Schedule schedule) {
            return schedule.atSeconds().size();
        } else if (arrivals instanceof Arrivals.WhenThrough pause) {
            return seconds / pause.pauseSeconds();
        }
        return 1;
    }
}
