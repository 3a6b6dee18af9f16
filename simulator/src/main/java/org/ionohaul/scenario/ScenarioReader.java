package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.ionohaul.link.FoldBack;
import org.ionohaul.link.Radio;
import org.ionohaul.link.StationTimes;

/**
 * Reads a scenario file and the mode files it names, and checks everything they say.
 *
 * <p>Mode files lie in the folder {@code modes} beside the scenario file, or where a path from there leads.
 */
public final class ScenarioReader {
    private final Notes notes = new Notes();

    private final SourceFiles files;

    private ScenarioReader(SourceFiles files) {
        this.files = files;
    }

    /**
     * Reads a scenario from the disk.
     *
     * @throws ScenarioProblems if anything in it or its modes is wrong, with all that is
     */
    public static Scenario read(Path file) throws ScenarioProblems {
        return read(file, Map.of());
    }

    /**
     * Reads a scenario from the disk with some values replaced, as if they stood in the files.
     *
     * @param overrides the values by full key: {@code near.snr}, {@code transfer.1.files.2.size},
     *     {@code modes.NAME.arq.window}; entries of repeated headings count from 1
     * @throws ScenarioProblems if anything in it or its modes is wrong, with all that is
     */
    public static Scenario read(Path file, Map<String, String> overrides) throws ScenarioProblems {
        return read(SourceFiles.DISK, file, overrides);
    }

    /**
     * Reads a scenario with some values replaced, as if they stood in the files.
     *
     * @param files where the texts come from
     * @param file the scenario's own
     * @param overrides the values by full key, as for {@link #read(Path, Map)}
     * @throws ScenarioProblems if anything in it or its modes is wrong, with all that is
     */
    public static Scenario read(SourceFiles files, Path file, Map<String, String> overrides) throws ScenarioProblems {
        return understand(files, file, overrides).scenario();
    }

    /**
     * Reads a scenario with some values replaced, and says what is odd about it.
     *
     * @param files where the texts come from
     * @param file the scenario's own
     * @param overrides the values by full key, as for {@link #read(Path, Map)}
     * @throws ScenarioProblems if anything in it or its modes is wrong, with all that is
     */
    public static Understood understand(SourceFiles files, Path file, Map<String, String> overrides)
            throws ScenarioProblems {
        ScenarioReader reader = new ScenarioReader(files);
        return reader.orProblems(() -> reader.understood(file, overrides));
    }

    /**
     * Reads one mode file from the disk.
     *
     * @throws ScenarioProblems if anything in it is wrong, with all that is
     */
    public static Mode readMode(Path file) throws ScenarioProblems {
        ScenarioReader reader = new ScenarioReader(SourceFiles.DISK);
        return reader.orProblems(() -> ModeFiles.read(file, reader.files, Map.of(), reader.notes));
    }

    /**
     * Returns where a scenario comes from, for the record: its own file first, then the mode files that it names, in its
     * order, then its tables of readings.
     *
     * @param files where the texts come from
     * @param file the scenario's own
     * @param overrides the values that replace those of the files, as for {@link #read(Path, Map)}
     * @throws IOException if a file has gone since it was read
     */
    public static Provenance provenance(SourceFiles files, Path file, Map<String, String> overrides)
            throws IOException {
        ScenarioReader reader = new ScenarioReader(files);
        Section top = reader.open(file, overrides).top(ScenarioFormat.TOP);
        List<Path> all = new ArrayList<>(List.of(file));
        all.addAll(reader.modeFilesOf(file, overrides).filesNamedIn(top));
        for (Group end : List.of(ScenarioFormat.NEAR, ScenarioFormat.FAR)) {
            top.part(end)
                    .findPart(ScenarioFormat.READINGS)
                    .flatMap(it -> SeriesReader.file(files, file, it))
                    .filter(it -> !all.contains(it))
                    .ifPresent(all::add);
        }
        Path folder = file.toAbsolutePath().normalize().resolveSibling("");
        List<InputFile> inputs = new ArrayList<>();
        for (Path input : all) {
            inputs.add(new InputFile(nameFrom(folder, input), files.text(input)));
        }
        return new Provenance(Provenance.programVersion(), inputs, overrides);
    }

    /** Names are written with slashes on every system, so that results are the same bytes. */
    private static String nameFrom(Path folder, Path file) {
        return folder.relativize(file.toAbsolutePath().normalize()).toString().replace('\\', '/');
    }

    /** Returns the file that is meant by a name without its ending; the name as it is if there is no such file. */
    public static Path named(Path file) {
        return TomlFolder.named(file, SourceFiles.DISK);
    }

    /** Returns the names of the mode files in a folder, in alphabetical order; none if it can't be read. */
    public static List<String> modeNames(Path folder) {
        return new TomlFolder(folder, SourceFiles.DISK).names();
    }

    private <T> T orProblems(Supplier<T> reading) throws ScenarioProblems {
        try {
            T read = reading.get();
            if (notes.problems().isEmpty()) {
                return read;
            }
        } catch (NoStandIn e) {
            if (notes.problems().isEmpty()) {
                throw new IllegalStateException(e);
            }
        }
        throw new ScenarioProblems(notes.problems(), notes.warnings());
    }

    private Understood understood(Path file, Map<String, String> overrides) {
        Document document = open(file, overrides);
        Section top = document.top(ScenarioFormat.TOP);
        Section near = top.part(ScenarioFormat.NEAR);
        Section far = top.part(ScenarioFormat.FAR);
        SkyReader reader = new SkyReader(
                top.get(ScenarioFormat.CLOCK), top.get(ScenarioFormat.HORIZON), top.get(ScenarioFormat.DISTANCE));
        SeriesReader series = new SeriesReader(files, file, notes, top.get(ScenarioFormat.CLOCK));
        DescribedSky sky = reader.sky(top.part(ScenarioFormat.SKY), near, far, series, document);
        TransferReader transferReader =
                new TransferReader(top.get(ScenarioFormat.CLOCK), top.get(ScenarioFormat.HORIZON));
        List<Section> transferSections = top.someParts(ScenarioFormat.TRANSFER);
        List<Transfer> transfers = transferReader.transfers(transferSections);
        List<Mode> modes = modeFilesOf(file, overrides).namedIn(top);
        if (top.isReadable(ScenarioFormat.HORIZON)) {
            transferReader.warnOfHopeless(transferSections, transfers, modes);
        }
        if (!top.has(ScenarioFormat.CLOCK) && (transferReader.usesClock() || reader.usesClock())) {
            top.warn(ScenarioFormat.CLOCK, "is left out, so times of day are counted from sending at 12:00");
        }
        StationDescription nearStation = station(near);
        StationDescription farStation = station(far);
        if (near.isReadable(ScenarioFormat.END_NAME)
                && far.isReadable(ScenarioFormat.END_NAME)
                && nearStation.name().strip().equalsIgnoreCase(farStation.name().strip())) {
            far.problem(
                    ScenarioFormat.END_NAME,
                    "\"" + farStation.name() + "\" is the name of the other station too",
                    "give each station its own name: the answers tell them apart by it");
        }
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
                sky));
        document.refuseUnusedOverrides();
        new Workload(top).refuseExcess(scenario);
        return new Understood(
                scenario, top.get(ScenarioFormat.CLOCK), top.place(ScenarioFormat.DISTANCE), notes.warnings());
    }

    private Document open(Path file, Map<String, String> overrides) {
        Map<String, String> own = new TreeMap<>(overrides);
        own.keySet().removeIf(key -> key.startsWith(ModeFiles.PREFIX));
        return Document.open(file, files, own, "", notes)
                .unlessRather(
                        ScenarioFormat.TOP,
                        ModeFormat.TOP,
                        "is a mode file, not a scenario",
                        "ionohaul mode " + file + " shows what the mode can do; a scenario names it under modes");
    }

    private ModeFiles modeFilesOf(Path file, Map<String, String> overrides) {
        return new ModeFiles(TomlFolder.ofModesBeside(file, files), overrides, notes);
    }

    private static StationDescription station(Section end) {
        Section times = end.part(ScenarioFormat.STATION);
        StationTimes stationTimes = times.build(() -> new StationTimes(
                times.get(ScenarioFormat.HANG),
                times.get(ScenarioFormat.RELAY),
                times.get(ScenarioFormat.RECOVERY),
                0));
        Radio radio =
                times.build(() -> new Radio(stationTimes, foldBack(end), times.get(ScenarioFormat.BUSY_DETECTION)));
        return end.build(() -> new StationDescription(
                end.get(ScenarioFormat.END_NAME),
                radio,
                end.find(ScenarioFormat.PATIENCE).orElse(Double.POSITIVE_INFINITY)));
    }

    private static FoldBack foldBack(Section end) {
        return end.findPart(ScenarioFormat.FOLD_BACK)
                .map(part -> part.build(() -> new FoldBack(
                        part.get(ScenarioFormat.FOLD_BACK_AFTER),
                        part.get(ScenarioFormat.FOLD_BACK_DROP),
                        part.get(ScenarioFormat.FOLD_BACK_COOLING))))
                .orElse(FoldBack.NEVER);
    }
}
