package org.ionohaul.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ionohaul.channel.End;

/**
 * What people call the quantity behind a key of a scenario file: whoever reads results need not know the file.
 *
 * @param quantity what it is, such as {@code SNR} or {@code Doppler spread of path 2}
 * @param place the station, mode or file that it belongs to, such as {@code at Flood desk}; empty if to none
 */
public record KeyName(String quantity, String place) {
    /** Where in the path of a file's key its number stands. */
    private static final int FILE_NUMBER = 3;

    /** Names of keys, those of nets too, without their numbers and the end they belong to; a # stands for the last number. */
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("snr", "SNR"),
            Map.entry("noise-environment", "surroundings"),
            Map.entry("congestion", "crowding"),
            Map.entry("impulses.share", "share of time with impulses"),
            Map.entry("impulses.rise", "rise of impulses"),
            Map.entry("impulses.slot", "length of impulses"),
            Map.entry("atmospherics.vd", "static"),
            Map.entry("interference.visits", "visits by others"),
            Map.entry("interference.visit", "length of others' visits"),
            Map.entry("interference.median", "level of others"),
            Map.entry("interference.deviation", "spread of others' levels"),
            Map.entry("noise-schedule.at", "time of noise point #"),
            Map.entry("noise-schedule.rise", "rise of noise point #"),
            Map.entry("tuning.offset", "frequency error"),
            Map.entry("tuning.drift", "frequency drift"),
            Map.entry("readings.meter-error", "meter error"),
            Map.entry("clock", "time of pressing send"),
            Map.entry("discipline.access", "who may call when"),
            Map.entry("discipline.order", "what goes first"),
            Map.entry("discipline.slot", "each one's time on the roster"),
            Map.entry("discipline.messages-a-call", "messages a call"),
            Map.entry("group.count", "stations of group #"),
            Map.entry("distance", "length of the path"),
            Map.entry("sky.condition", "kind of path"),
            Map.entry("sky.path.delay", "delay of path #"),
            Map.entry("sky.path.power", "power of path #"),
            Map.entry("sky.path.doppler-shift", "Doppler shift of path #"),
            Map.entry("sky.path.doppler-spread", "Doppler spread of path #"),
            Map.entry("sky.frequency", "frequency"),
            Map.entry("sky.losses", "losses of the path"),
            Map.entry("sky.day-to-day", "change from day to day"),
            Map.entry("sky.slow-variation.deviation", "slow variation"),
            Map.entry("sky.slow-variation.time-constant", "time constant of slow variation"),
            Map.entry("sky.ground-wave.level", "level of the ground wave"),
            Map.entry("sky.ground-wave.over-ground", "distance over ground"),
            Map.entry("sky.drop-outs.between", "time between drop-outs"),
            Map.entry("sky.drop-outs.length", "length of drop-outs"),
            Map.entry("sky.drop-outs.depth", "depth of drop-outs"),
            Map.entry("sky.sporadic-e.between", "time between spells of sporadic E"),
            Map.entry("sky.sporadic-e.length", "length of sporadic E"),
            Map.entry("sky.sporadic-e.gain", "gain of sporadic E"),
            Map.entry("sky.trend.at", "time of trend point #"),
            Map.entry("sky.trend.rise", "rise of trend point #"));

    /**
     * Returns the name of a key.
     *
     * @param scenario whose stations, modes and files it may belong to
     * @param key its full name; entries of repeated headings count from 1; what is no key of a scenario is made words of
     */
    public static KeyName of(Scenario scenario, String key) {
        List<String> path = Arrays.asList(key.split("\\.", -1));
        int last = path.size() - 1;
        String top = path.get(0);
        if (last == 0 || top.equals("sky")) {
            return new KeyName(quantity(path), "");
        }
        return switch (top) {
            case "near", "far" -> {
                End end = top.equals("near") ? End.NEAR : End.FAR;
                yield new KeyName(
                        quantity(path.subList(1, last + 1)),
                        "at " + scenario.station(end).name());
            }
            case "modes" -> new KeyName(quantity(path.subList(2, last + 1)), "of " + title(scenario, path.get(1)));
            case "transfer" -> new KeyName(quantity(path.subList(last, last + 1)), "of " + sent(scenario, path));
            default -> new KeyName(quantity(path), "");
        };
    }

    /** Returns it in full, such as {@code SNR at Flood desk}. */
    public String words() {
        return place.isEmpty() ? quantity : quantity + " " + place;
    }

    /** Returns the same with the key, for whoever wants to change the file. */
    public static String withKey(Scenario scenario, String key) {
        return of(scenario, key).words() + " (" + key + ")";
    }

    /** Returns words for a key whose scenario is not known or has no such names, as that of a net: {@code load}. */
    public static String plain(String key) {
        return quantity(Arrays.asList(key.split("\\.", -1)));
    }

    /** Returns the keys with names of their own, without numbers and the end they belong to. */
    static Stream<String> named() {
        return NAMES.keySet().stream();
    }

    private static String title(Scenario scenario, String mode) {
        return scenario.modes().stream()
                .filter(it -> it.name().equals(mode))
                .map(Mode::title)
                .findFirst()
                .orElse(mode);
    }

    private static String sent(Scenario scenario, List<String> path) {
        Optional<Transfer> transfer = numbered(scenario.transfers(), path.get(1));
        return path.size() > FILE_NUMBER
                ? transfer.flatMap(it -> numbered(it.files(), path.get(FILE_NUMBER)))
                        .map(PayloadFile::name)
                        .orElse("a file")
                : transfer.map(Transfer::name).orElse("a transfer");
    }

    private static <T> Optional<T> numbered(List<T> entries, String number) {
        return IntStream.range(0, entries.size())
                .filter(i -> number.equals(Integer.toString(i + 1)))
                .mapToObj(entries::get)
                .findFirst();
    }

    private static String quantity(List<String> path) {
        List<String> numbers = path.stream().filter(KeyName::isNumber).toList();
        List<String> words = path.stream().filter(it -> !isNumber(it)).toList();
        String number = numbers.isEmpty() ? "1" : numbers.get(numbers.size() - 1);
        String name = NAMES.getOrDefault(
                String.join(".", words), String.join(" ", words).replace('-', ' '));
        return name.contains("#") ? name.replace("#", number) : number.equals("1") ? name : name + ", no. " + number;
    }

    private static boolean isNumber(String part) {
        return part.matches("\\d+");
    }
}
