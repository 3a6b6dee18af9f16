package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Writes a file that holds every key's example, so that the format's own table is what tests run through. */
final class WrittenExamples {
    private final StringBuilder text = new StringBuilder();
    private final Set<String> leftOut;

    private WrittenExamples(Set<String> leftOut) {
        this.leftOut = leftOut;
    }

    /** Returns the text of a file with every key of a format but those named. */
    static String of(Group top, String... leftOut) {
        WrittenExamples examples = new WrittenExamples(Set.of(leftOut));
        examples.write("", top);
        return examples.text.toString();
    }

    /** Returns the keys of a format by full name, those of repeated headings with number 1. */
    static List<Place> places(Group top) {
        List<Place> places = new ArrayList<>();
        collect("", top, places);
        return places;
    }

    private static void collect(String path, Group group, List<Place> places) {
        group.keys().forEach(key -> places.add(new Place(path + key.name(), key)));
        group.parts().forEach(part -> collect(path + part.name() + (isRepeated(part) ? ".1." : "."), part, places));
    }

    /**
     * A key and where it stands.
     *
     * @param name its full name
     * @param key the key
     */
    record Place(String name, Key<?> key) {
        @Override
        public String toString() {
            return name;
        }
    }

    static boolean isRepeated(Group group) {
        return Set.of(
                        "rate",
                        "transfer",
                        "files",
                        "noise-schedule",
                        "trend",
                        "interference",
                        "path",
                        "group",
                        "message",
                        "audible")
                .contains(group.name());
    }

    private void write(String path, Group group) {
        for (Key<?> key : group.keys()) {
            if (!leftOut.contains(path + key.name())) {
                text.append(key.name())
                        .append(" = ")
                        .append(Kind.shown(key.example()))
                        .append('\n');
            }
        }
        for (Group part : group.parts()) {
            String heading = path + part.name();
            if (!leftOut.contains(heading)) {
                text.append(isRepeated(part) ? "[[" + heading + "]]\n" : "[" + heading + "]\n");
                write(heading + ".", part);
            }
        }
    }
}
