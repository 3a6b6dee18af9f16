package org.ionohaul.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** A scenario as text: what stands after its keys, and the same text with other values, remarks and all. */
public final class ScenarioText {
    private final String text;
    private final Map<String, String> changes;

    /**
     * Takes a text that was read without a problem.
     *
     * @param changes values that replace some of its own, by full key, as they were given on the command line
     */
    public ScenarioText(String text, Map<String, String> changes) {
        this.text = text;
        this.changes = new LinkedHashMap<>(changes);
    }

    /**
     * Returns an uncertain input in the numbers and unit that it is written in; empty if it is not written so, see {@link
     * WrittenInput}.
     *
     * @param key its full key
     */
    public Optional<WrittenInput> input(String key) {
        Optional<Object> changed = Optional.ofNullable(changes.get(key)).map(Document::valueOf);
        return changed.or(() -> place(key).map(Place::value)).flatMap(WrittenInput::of);
    }

    /**
     * Returns what stands after a key, as a person would type it on the command line; empty if the key does not stand in the
     * text.
     *
     * @param key the full key
     */
    public Optional<String> written(String key) {
        return place(key)
                .flatMap(place -> span(place)
                        .map(span -> place.value() instanceof String words
                                ? words
                                : text.substring(span.from(), span.to()).strip()));
    }

    /**
     * Returns the text with another value for a key.
     *
     * @param key the full key
     * @param value how the value is written in a file, with quotation marks or brackets
     * @return empty if the key does not stand in the text
     */
    public Optional<ScenarioText> with(String key, String value) {
        return place(key).flatMap(this::span).map(span -> {
            Map<String, String> left = new LinkedHashMap<>(changes);
            left.remove(key);
            return new ScenarioText(text.substring(0, span.from()) + value + text.substring(span.to()), left);
        });
    }

    /** Returns the text with all changes made that have a place in it. */
    public ScenarioText withChanges() {
        ScenarioText changed = this;
        for (Map.Entry<String, String> change : changes.entrySet()) {
            Object value = Document.valueOf(change.getValue());
            String written = value instanceof String words ? "\"" + words + "\"" : change.getValue();
            changed = changed.with(change.getKey(), written).orElse(changed);
        }
        return changed;
    }

    /** Returns the changes that have no place in the text. */
    public Map<String, String> changesLeft() {
        return Map.copyOf(changes);
    }

    @Override
    public String toString() {
        return text;
    }

    private Optional<Place> place(String key) {
        try {
            TomlParseResult content = BrokenSyntax.parse(text);
            return place(content, List.of(key.split("\\.")), key);
        } catch (BrokenSyntax e) {
            return Optional.empty();
        }
    }

    private static Optional<Place> place(TomlTable table, List<String> path, String key) {
        List<String> name = path.subList(0, 1);
        Object value = Section.plain(table.get(name));
        if (path.size() == 1) {
            TomlPosition position = table.inputPositionOf(name);
            return value == null || position == null ? Optional.empty() : Optional.of(new Place(value, position));
        }
        if (table.get(name) instanceof TomlTable below) {
            return place(below, path.subList(1, path.size()), key);
        }
        if (table.get(name) instanceof TomlArray array && path.size() > 2) {
            int entry = Integer.parseInt(path.get(1)) - 1;
            return entry >= 0 && entry < array.size() && array.get(entry) instanceof TomlTable below
                    ? place(below, path.subList(2, path.size()), key)
                    : Optional.empty();
        }
        return Optional.empty();
    }

    /** Where a value's characters are: behind the next equals sign, a string or whatever brackets enclose. */
    private Optional<Span> span(Place place) {
        int from = offset(place.position());
        while (from < text.length() && text.charAt(from) != '=') {
            from++;
        }
        from++;
        while (from < text.length() && Character.isWhitespace(text.charAt(from))) {
            from++;
        }
        int to = end(from);
        return to > from ? Optional.of(new Span(from, to)) : Optional.empty();
    }

    private int offset(TomlPosition position) {
        int offset = 0;
        for (int line = 1; line < position.line(); line++) {
            offset = text.indexOf('\n', offset) + 1;
        }
        return offset + position.column() - 1;
    }

    private int end(int from) {
        int depth = 0;
        int at = from;
        while (at < text.length()) {
            char sign = text.charAt(at);
            if (sign == '"' || sign == '\'') {
                at = text.indexOf(sign, at + 1);
                if (at < 0) {
                    return -1;
                }
                if (depth == 0) {
                    return at + 1;
                }
            } else if (sign == '#') {
                at = Math.max(at, text.indexOf('\n', at));
            } else if (sign == '[' || sign == '{') {
                depth++;
            } else if (sign == ']' || sign == '}') {
                depth--;
                if (depth <= 0) {
                    return depth < 0 ? at : at + 1;
                }
            } else if (depth == 0 && (sign == '\n' || sign == ',')) {
                return at;
            }
            at++;
        }
        return depth == 0 ? at : -1;
    }

    /** A value with where its key stands. */
    private record Place(Object value, TomlPosition position) {}

    /** Characters from one offset to before another. */
    private record Span(int from, int to) {}
}
