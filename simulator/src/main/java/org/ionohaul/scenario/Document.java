package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/**
 * One file while it is being read, with the values that replace some of its own, and where its problems are collected.
 *
 * <p>Reading never stops at a problem: what can't be read is stood in for by its key's example, so that everything wrong
 * comes out in one go. What was built is worth nothing once there is a problem.
 */
final class Document {
    /** What stands for the file in a problem with a value that came from no file. */
    static final String OVERRIDES = "--set";

    /** Broken on purpose, so that the keys of a file that can't be read are not called missing. */
    private static final String UNREADABLE = "=";

    /** A number with a unit, as most cells of long tables are: never TOML, which would need quotation marks. */
    private static final Pattern QUANTITY = Pattern.compile("[+-]?\\d+(?:\\.\\d+)? [A-Za-z]+");

    private final String name;
    private final TomlParseResult content;
    private final Map<String, Object> overrides;
    private final Set<String> validKeys = new TreeSet<>();
    private final String overridePrefix;
    private final Notes notes;
    private final Set<String> uncertainKeys = new TreeSet<>();

    private Document(
            String name, TomlParseResult content, Map<String, Object> overrides, String overridePrefix, Notes notes) {
        this.name = name;
        this.content = content;
        this.overrides = overrides;
        this.overridePrefix = overridePrefix;
        this.notes = notes;
    }

    /**
     * Opens a file. That it can't be read is a problem like others.
     *
     * @param files where it comes from
     * @param overrides values that replace those of the file, by full key, written as in TOML or as plain text
     * @param overridePrefix what the user wrote before those keys, for messages
     * @param notes where problems and warnings go
     */
    static Document open(
            Path file, SourceFiles files, Map<String, String> overrides, String overridePrefix, Notes notes) {
        Map<String, Object> values = new LinkedHashMap<>();
        overrides.forEach((key, text) -> values.put(key, valueOf(text)));
        try {
            String text = withoutByteOrderMark(files.text(file));
            TomlParseResult content = RememberedFiles.parsed(files, text);
            Document document = new Document(file.toString(), content, values, overridePrefix, notes);
            List<String> lines = text.lines().toList();
            content.errors().stream().map(error -> SyntaxSlip.of(error, lines)).forEach(document::add);
            return document;
        } catch (BrokenSyntax e) {
            notes.add(new Problem(
                    file.toString(),
                    e.line(),
                    1,
                    "",
                    "nothing after this can be understood",
                    "look for a missing quotation mark or bracket here and in the lines before"));
            return new Document(file.toString(), Toml.parse(UNREADABLE), values, overridePrefix, notes);
        } catch (IOException e) {
            notes.add(new Problem(
                    file.toString(),
                    0,
                    0,
                    "",
                    reason(file, files, e),
                    files.exists(file) ? "" : TomlFolder.of(file, files).advice(file)));
            return new Document(file.toString(), Toml.parse(UNREADABLE), values, overridePrefix, notes);
        }
    }

    private static String reason(Path file, SourceFiles files, IOException cause) {
        if (!files.exists(file)) {
            return "there is no such file";
        }
        if (Files.isDirectory(file)) {
            return "is a folder, not a file";
        }
        return cause instanceof CharacterCodingException
                ? "is not a text file in UTF-8"
                : "can't be read: " + (cause instanceof FileSystemException failure ? failure.getReason() : cause);
    }

    /** Returns what a value on the command line says: as in TOML, or plain text. */
    static Object valueOf(String text) {
        if (QUANTITY.matcher(text).matches()) {
            return text;
        }
        try {
            TomlParseResult parsed = BrokenSyntax.parse("value = " + text);
            Object value = parsed.hasErrors() ? null : Section.plain(parsed.get("value"));
            return value == null ? WrittenText.unquoted(text) : value;
        } catch (BrokenSyntax e) {
            return WrittenText.unquoted(text);
        }
    }

    /** Some editors begin a file with this mark, which says nothing. */
    private static String withoutByteOrderMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private void add(SyntaxSlip slip) {
        notes.add(new Problem(name, slip.line(), slip.column(), "", slip.message(), slip.remedy()));
    }

    /**
     * Returns this file; if its keys are those of a file of another kind, that is the one problem, and a file that can't be
     * read stands in for it.
     *
     * @param own the keys of the kind that it should be
     * @param other those of the kind that it may be
     */
    Document unlessRather(Group own, Group other, String message, String remedy) {
        if (!isRather(own, other)) {
            return this;
        }
        notes.add(new Problem(name, 1, 1, "", message, remedy));
        return new Document(name, Toml.parse(UNREADABLE), Map.of(), overridePrefix, notes);
    }

    /** Returns whether it has names of another kind of file, and none that only its own kind has. */
    boolean isRather(Group own, Group other) {
        Set<String> names = content.keySet();
        return names.stream().anyMatch(it -> isOf(other, own, it))
                && names.stream().noneMatch(it -> isOf(own, other, it));
    }

    private static boolean isOf(Group kind, Group notOf, String name) {
        return kind.has(name) && !notOf.has(name);
    }

    /** Returns the top of the file as a section with the given keys. */
    Section top(Group group) {
        return Section.of(this, "", content, TomlPosition.positionAt(1, 1), group);
    }

    /** Returns whether missing keys may just be victims of an error of syntax (a key defined twice makes none). */
    boolean isBroken() {
        return content.errors().stream()
                .anyMatch(error -> !String.valueOf(error.getMessage()).contains(" previously defined at "));
    }

    /** Notes that a key may stand in the file. */
    void noteValid(String fullKey) {
        validKeys.add(fullKey);
    }

    /** Returns the value that replaces the one of a key, if there is one. */
    Optional<Object> override(String fullKey) {
        return Optional.ofNullable(overrides.get(fullKey));
    }

    /** Returns whether any value below a heading is replaced. */
    boolean overridesBelow(String heading) {
        return overrides.keySet().stream().anyMatch(key -> key.startsWith(heading + "."));
    }

    void noteUncertain(String fullKey) {
        uncertainKeys.add(fullKey);
    }

    /** Returns the keys whose values are distributions, in alphabetical order. */
    List<String> uncertainKeys() {
        return List.copyOf(uncertainKeys);
    }

    void add(TomlPosition position, String key, String message, String remedy) {
        notes.add(place(position, key).problem(message, remedy));
    }

    void warn(TomlPosition position, String key, String message, String remedy) {
        notes.add(place(position, key).warning(message, remedy));
    }

    /** Returns where the value of a key stands: at a position in the file, or on the command line. */
    Place place(TomlPosition position, String key) {
        return overrides.containsKey(key)
                ? new Place(OVERRIDES, 0, 0, overridePrefix + key)
                : new Place(name, position.line(), position.column(), key);
    }

    /** Adds a problem for each replacing value whose key may not stand in the file; call when everything has been read. */
    void refuseUnusedOverrides() {
        for (String key : overrides.keySet()) {
            if (!validKeys.contains(key)) {
                String now = FormerNames.now(key);
                if (validKeys.contains(now)) {
                    add(TomlPosition.positionAt(1, 1), key, "is called " + overridePrefix + now + " now", "");
                    continue;
                }
                String remedy = Spelling.nearest(key, validKeys)
                        .map(near -> "did you mean \"" + overridePrefix + near + "\"?")
                        .orElse("");
                add(TomlPosition.positionAt(1, 1), key, "there is no such key", remedy);
            }
        }
    }
}
