package org.ionohaul.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A scenario, its mode files and what is set on the command line in one text, as a fuzzer can change it: each part begins
 * with a line such as {@code #### modes/quick.toml}.
 *
 * @param files the files' texts by name
 * @param changes what is set on the command line, by key
 */
record WrittenInput(Map<String, String> files, Map<String, String> changes) {
    /** The scenario's file. */
    static final Path SCENARIO = Path.of("scenario.toml");

    private static final Path SHIPPED = Path.of("..", "scenarios");
    private static final Path WRONG = Path.of("src", "test", "resources", "golden", "scenario");
    private static final String CHANGES = "--set";
    private static final Pattern HEAD = Pattern.compile("(?m)^#### ([\\w./-]+)$\\n?");

    /** Takes a text apart; what stands before the first head is the scenario. */
    static WrittenInput of(String text) {
        Map<String, String> parts = new LinkedHashMap<>();
        Matcher head = HEAD.matcher(text);
        String name = SCENARIO.toString();
        int from = 0;
        while (head.find()) {
            parts.put(name, text.substring(from, head.start()));
            name = head.group(1);
            from = head.end();
        }
        parts.put(name, text.substring(from));
        Map<String, String> changes = new LinkedHashMap<>();
        String settings = parts.containsKey(CHANGES) ? parts.remove(CHANGES) : "";
        settings.lines().filter(line -> line.indexOf('=') > 0).forEach(line -> {
            int equals = line.indexOf('=');
            changes.put(
                    line.substring(0, equals).strip(),
                    line.substring(equals + 1).strip());
        });
        return new WrittenInput(parts, changes);
    }

    /** Returns every shipped scenario with each shipped mode, and every wrong file of the golden ones. */
    static List<String> seeds() throws IOException {
        List<String> seeds = new ArrayList<>();
        List<Path> scenarios = tomlIn(SHIPPED);
        List<Path> modes = tomlIn(SHIPPED.resolve("modes"));
        for (int i = 0; i < modes.size(); i++) {
            String scenario = Files.readString(scenarios.get(i % scenarios.size()));
            String mode = modes.get(i).getFileName().toString();
            seeds.add(scenario.replaceAll("(?m)^modes = .*$", "modes = [\"" + mode.replace(".toml", "") + "\"]")
                    + "#### modes/" + mode + "\n" + Files.readString(modes.get(i))
                    + "#### --set\nsky.losses = 9 dB ± 3 dB\ntrials = 3\n");
        }
        for (Path wrong : tomlIn(WRONG)) {
            seeds.add(Files.readString(wrong));
        }
        for (Path wrong : tomlIn(WRONG.resolve("modes"))) {
            seeds.add(Files.readString(scenarios.get(0)).replaceAll("(?m)^modes = .*$", "modes = [\"wrong\"]")
                    + "#### modes/wrong.toml\n" + Files.readString(wrong));
        }
        return seeds;
    }

    private static List<Path> tomlIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".toml"))
                    .sorted()
                    .toList();
        }
    }
}
