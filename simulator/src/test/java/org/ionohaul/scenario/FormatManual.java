package org.ionohaul.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes the tables of a format's manual from the keys that its reader knows, so that the two can't differ. */
final class FormatManual {
    private final StringBuilder text = new StringBuilder();
    private final Map<List<Key<?>>, String> headingsByKeys = new HashMap<>();

    private FormatManual() {}

    /** Returns the tables of a scenario file in Markdown. */
    static String ofScenario() {
        FormatManual manual = new FormatManual();
        manual.write("", ScenarioFormat.TOP);
        return manual.text.toString();
    }

    /** Returns the tables of a mode file in Markdown. */
    static String ofMode() {
        FormatManual manual = new FormatManual();
        manual.write("", ModeFormat.TOP);
        for (RatePolicyFormat.Policy policy : RatePolicyFormat.POLICIES) {
            manual.writeGroup(
                    "### `[rate-policy]` with `policy = \"" + policy.name() + "\"`", policy.meaning(), policy.keys());
        }
        return manual.text.toString();
    }

    /** Returns the tables of a net's file in Markdown. */
    static String ofNet() {
        FormatManual manual = new FormatManual();
        manual.write("", NetFormat.TOP);
        return manual.text.toString();
    }

    private void write(String path, Group group) {
        String heading = path + group.name();
        writeGroup(
                heading.isEmpty() ? "### At the top" : "### `" + bracketed(heading, group) + "`",
                group.meaning(),
                group.keys());
        for (Group part : group.parts()) {
            write(heading.isEmpty() ? "" : heading + ".", part);
        }
    }

    private static String bracketed(String heading, Group group) {
        return WrittenExamples.isRepeated(group) ? "[[" + heading + "]]" : "[" + heading + "]";
    }

    private void writeGroup(String heading, String meaning, List<Key<?>> keys) {
        text.append(heading).append("\n\n").append(meaning).append('\n');
        String earlier = headingsByKeys.putIfAbsent(keys, heading);
        if (earlier != null && !keys.isEmpty()) {
            text.append("Its keys are those of ")
                    .append(earlier.replace("### ", ""))
                    .append(".\n");
        } else if (!keys.isEmpty()) {
            text.append("\n| key | example | what it says | if left out |\n|---|---|---|---|\n");
            keys.forEach(this::writeRow);
        }
        text.append('\n');
    }

    private void writeRow(Key<?> key) {
        text.append("| `")
                .append(key.name())
                .append("` | `")
                .append(Kind.shown(key.example()))
                .append("` | ")
                .append(key.meaning())
                .append(choices(key))
                .append(key.kind().words().endsWith(UncertainReading.MARK) ? " May be uncertain." : "")
                .append(" | ")
                .append(key.otherwise()
                        .map(value -> "`" + Kind.shown(value) + "`")
                        .orElse(""))
                .append(" |\n");
    }

    private static String choices(Key<?> key) {
        String words = key.kind().words();
        return words.contains("one of ") ? " Choices: " + words.substring(words.indexOf("one of ") + 7) + "." : "";
    }
}
