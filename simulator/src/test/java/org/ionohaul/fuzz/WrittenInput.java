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
 * A scenario, its mode files, tables beside it and what is set on the command line in one text, as a fuzzer can change it: each
 * part begins with a line such as {@code #### modes/quick.toml}.
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
    /** More of them would be changed at the cost of everything else. */
    private static final int LINES_OF_TABLE = 20;

    private static final int MODES_OF_A_NET = 3;

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

    /** Returns the tables that lie beside the scenario: logs, readings, cases. */
    List<Path> tables() {
        return files.keySet().stream()
                .filter(it -> it.endsWith(".csv"))
                .map(Path::of)
                .toList();
    }

    /** Returns every shipped scenario with its tables, every shipped mode and net, and every wrong file of the golden ones. */
    static List<String> seeds() throws IOException {
        List<String> seeds = new ArrayList<>();
        List<Path> scenarios = tomlIn(SHIPPED);
        List<Path> modes = tomlIn(SHIPPED.resolve("modes"));
        for (int i = 0; i < Math.max(modes.size(), scenarios.size()); i++) {
            Path scenario = scenarios.get(i % scenarios.size());
            Path file = modes.get(i % modes.size());
            String mode = file.getFileName().toString().replace(".toml", "");
            seeds.add(Files.readString(scenario).replaceAll("(?m)^modes = .*$", "modes = [\"" + mode + "\"]")
                    + "#### modes/" + mode + ".toml\n" + Files.readString(file)
                    + "#### --set\nsky.losses = 9 dB ± 3 dB\ntrials = 3\n"
                    + tablesOf(scenario, mode));
        }
        for (Path net : tomlIn(SHIPPED.resolve("nets"))) {
            for (Path file : modes.subList(0, MODES_OF_A_NET)) {
                String mode = file.getFileName().toString().replace(".toml", "");
                seeds.add(Files.readString(net).replaceAll("(?m)^modes = .*$", "modes = [\"" + mode + "\"]")
                        + "#### modes/" + mode + ".toml\n" + Files.readString(file)
                        + "#### --set\ndiscipline.access = roster\ntrials = 3\n");
            }
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

    /** The shipped tables that are named like a scenario, a mode of its in place of the others, long ones shortened. */
    private static String tablesOf(Path scenario, String mode) throws IOException {
        String name = scenario.getFileName().toString().replace(".toml", "");
        StringBuilder tables = new StringBuilder();
        for (Path table : filesIn(SHIPPED, name + "(-.*)?\\.csv")) {
            tables.append("#### ").append(table.getFileName()).append('\n');
            Files.readAllLines(table).stream()
                    .limit(LINES_OF_TABLE)
                    .map(line -> line.replaceAll("patient-climber|brisk-comb", mode) + "\n")
                    .forEach(tables::append);
        }
        return tables.toString();
    }

    private static List<Path> tomlIn(Path folder) throws IOException {
        return filesIn(folder, ".*\\.toml");
    }

    private static List<Path> filesIn(Path folder, String names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches(names))
                    .sorted()
                    .toList();
        }
    }
}
