package org.ionohaul.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ionohaul.channel.SkyConditions;
import org.ionohaul.link.StationTimes;

/**
 * Reads a scenario file and the mode files it names, and checks everything they say.
 *
 * <p>Mode files lie in the folder {@code modes} beside the scenario file.
 */
public final class ScenarioReader {
    private static final String MODE_PREFIX = "modes.";

    private final Set<Problem> problems = new TreeSet<>();

    private ScenarioReader() {}

    /**
     * Reads a scenario.
     *
     * @throws ScenarioProblems if anything in it or its modes is wrong, with all that is
     */
    public static Scenario read(Path file) throws ScenarioProblems {
        return read(file, Map.of());
    }

    /**
     * Reads a scenario with some values replaced, as if they stood in the files.
     *
     * @param overrides the values by full key: {@code near.snr}, {@code transfer.1.files.2.size},
     *     {@code modes.NAME.arq.window}; entries of repeated headings count from 1
     * @throws ScenarioProblems if anything in it or its modes is wrong, with all that is
     */
    public static Scenario read(Path file, Map<String, String> overrides) throws ScenarioProblems {
        ScenarioReader reader = new ScenarioReader();
        return reader.orProblems(reader.scenario(file, overrides));
    }

    /**
     * Reads one mode file.
     *
     * @throws ScenarioProblems if anything in it is wrong, with all that is
     */
    public static Mode readMode(Path file) throws ScenarioProblems {
        ScenarioReader reader = new ScenarioReader();
        return reader.orProblems(reader.mode(file, Map.of()));
    }

    /** Returns the names of the mode files in a folder, in alphabetical order; none if it can't be read. */
    public static List<String> modeNames(Path folder) {
        return new TomlFolder(folder).names();
    }

    private <T> T orProblems(T read) throws ScenarioProblems {
        if (problems.isEmpty()) {
            return read;
        }
        throw new ScenarioProblems(List.copyOf(problems));
    }

    private Scenario scenario(Path file, Map<String, String> overrides) {
        Map<String, String> own = new TreeMap<>(overrides);
        own.keySet().removeIf(key -> key.startsWith(MODE_PREFIX));
        Document document = Document.open(file, own, "", problems);
        Section top = document.top(ScenarioFormat.TOP);
        Section near = top.part(ScenarioFormat.NEAR);
        Section far = top.part(ScenarioFormat.FAR);
        SkyReader reader = new SkyReader(top.get(ScenarioFormat.CLOCK), top.get(ScenarioFormat.DISTANCE));
        Described<SkyConditions> sky = reader.sky(top.part(ScenarioFormat.SKY), near, far);
        List<Transfer> transfers = transfers(top);
        List<Mode> modes = modes(top, TomlFolder.ofModesBeside(file), overrides);
        Station nearStation = station(near);
        Station farStation = station(far);
        Scenario scenario = top.build(() -> new Scenario(
                TomlFolder.nameOf(file),
                top.get(ScenarioFormat.TITLE),
                top.get(ScenarioFormat.SEED),
                top.get(ScenarioFormat.TRIALS),
                top.get(ScenarioFormat.HORIZON),
                top.get(ScenarioFormat.DISTANCE),
                transfers,
                modes,
                nearStation,
                farStation,
                new DescribedSky(sky, document.uncertainKeys())));
        document.refuseUnusedOverrides();
        return scenario;
    }

    private static List<Transfer> transfers(Section top) {
        List<Transfer> transfers = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Section section : top.someParts(ScenarioFormat.TRANSFER)) {
            Transfer transfer = transfer(section);
            if (!names.add(transfer.name())) {
                section.problem(
                        ScenarioFormat.TRANSFER_NAME,
                        "\"" + transfer.name() + "\" is the name of an earlier transfer",
                        "give each transfer its own name");
            }
            transfers.add(transfer);
        }
        return transfers;
    }

    private static Transfer transfer(Section section) {
        List<PayloadFile> files = section.someParts(ScenarioFormat.FILE).stream()
                .map(ScenarioReader::payloadFile)
                .toList();
        return section.build(() -> new Transfer(
                section.get(ScenarioFormat.TRANSFER_NAME),
                files,
                section.get(ScenarioFormat.DIRECTIONS),
                section.find(ScenarioFormat.DEADLINES).orElse(List.of())));
    }

    private static PayloadFile payloadFile(Section section) {
        return section.build(() -> PayloadFile.compressed(
                section.get(ScenarioFormat.FILE_NAME),
                section.get(ScenarioFormat.SIZE),
                section.get(ScenarioFormat.COMPRESSION)));
    }

    private static Station station(Section end) {
        Section times = end.part(ScenarioFormat.STATION);
        StationTimes stationTimes = times.build(() -> new StationTimes(
                times.get(ScenarioFormat.HANG),
                times.get(ScenarioFormat.RELAY),
                times.get(ScenarioFormat.RECOVERY),
                0));
        return end.build(() -> new Station(
                end.get(ScenarioFormat.END_NAME),
                stationTimes,
                end.find(ScenarioFormat.PATIENCE).orElse(Double.POSITIVE_INFINITY)));
    }

    private List<Mode> modes(Section top, TomlFolder folder, Map<String, String> overrides) {
        List<String> names = top.get(ScenarioFormat.MODES);
        List<Mode> modes = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            if (folder.names().contains(name)) {
                modes.add(mode(folder.file(name), overridesOf(name, overrides)));
            } else if (top.has(ScenarioFormat.MODES)) {
                top.problemOfEntry(
                        ScenarioFormat.MODES,
                        i,
                        "there is no mode file " + folder.file(name),
                        Spelling.advice(name, folder.names()));
            }
        }
        for (String key : overrides.keySet()) {
            if (key.startsWith(MODE_PREFIX)
                    && names.stream().noneMatch(name -> key.startsWith(MODE_PREFIX + name + "."))) {
                problems.add(new Problem(
                        Document.OVERRIDES,
                        0,
                        0,
                        key,
                        "is a key of no mode in this scenario",
                        "modes: " + String.join(", ", names)));
            }
        }
        return modes;
    }

    private static Map<String, String> overridesOf(String mode, Map<String, String> overrides) {
        String prefix = MODE_PREFIX + mode + ".";
        Map<String, String> own = new TreeMap<>();
        overrides.forEach((key, value) -> {
            if (key.startsWith(prefix)) {
                own.put(key.substring(prefix.length()), value);
            }
        });
        return own;
    }

    private Mode mode(Path file, Map<String, String> overrides) {
        String name = TomlFolder.nameOf(file);
        Document document = Document.open(file, overrides, MODE_PREFIX + name + ".", problems);
        Mode mode = ModeReader.read(name, document);
        document.refuseUnusedOverrides();
        return mode;
    }
}
