package org.ionohaul.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.ionohaul.limits.OutOfRange;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** The keys below one heading of a file while they are being read; see {@link Document} on how problems are handled. */
final class Section {
    private final Document document;
    private final String path;
    private final TomlTable table;
    private final TomlPosition position;
    private final Group group;
    private final boolean isStandIn;
    private final @Nullable Section inherited;
    private final Set<String> replaced = new HashSet<>();

    private Section(
            Document document,
            String path,
            TomlTable table,
            TomlPosition position,
            Group group,
            boolean isStandIn,
            @Nullable Section inherited) {
        this.document = document;
        this.path = path;
        this.table = table;
        this.position = position;
        this.group = group;
        this.isStandIn = isStandIn;
        this.inherited = inherited;
    }

    /** Returns a section over a table, after refusing keys that its group doesn't have and values that can't be read, used or not. */
    static Section of(Document document, String path, TomlTable table, TomlPosition position, Group group) {
        Section section = new Section(document, path, table, position, group, false, null);
        section.checkKeys();
        return section;
    }

    private void checkKeys() {
        for (Key<?> key : group.keys()) {
            document.noteValid(fullKey(key.name()));
            find(key).flatMap(key::oddity).ifPresent(oddity -> warn(key, oddity));
        }
        for (String name : table.keySet()) {
            if (!group.isOpen() && !group.has(name)) {
                refuseName(name);
            }
        }
    }

    private void refuseName(String name) {
        Optional<String> now = FormerNames.now(name, Objects.requireNonNull(table.get(List.of(name))));
        if (now.isPresent()) {
            document.add(positionOf(name), fullKey(name), "is called " + now.get() + " now", "write " + now.get());
        } else {
            document.add(positionOf(name), fullKey(name), "there is no such key", Spelling.advice(name, group.names()));
        }
    }

    /** Returns the value of a key; where there is none, its default or, after a problem, its example. */
    <T> T get(Key<T> key) {
        if (replaced.contains(key.name())) {
            return standIn(key, key.example());
        }
        Optional<T> found = find(key);
        if (found.isPresent()) {
            return found.get();
        }
        if (key.otherwise().isEmpty() && mayComplain(key.name())) {
            document.add(
                    position,
                    fullKey(key.name()),
                    "is missing",
                    "add a line such as: " + key.name() + " = " + Kind.shown(key.example()));
        }
        return standIn(key, key.otherwise().orElse(key.example()));
    }

    /** Returns the value of a key if it stands in the file. */
    <T> Optional<T> find(Key<T> key) {
        Object value = value(key.name());
        if (value == null) {
            return Optional.empty();
        }
        if (replaced.contains(key.name())) {
            return Optional.of(standIn(key, key.example()));
        }
        try {
            return Optional.of(key.kind().read(value));
        } catch (WrongValue e) {
            problem(key, e.message(), e.remedy());
            return Optional.of(standIn(key, key.example()));
        }
    }

    private static <T> T standIn(Key<T> key, Object value) {
        try {
            return key.kind().read(value);
        } catch (WrongValue e) {
            throw new IllegalStateException("bad example or default of key " + key.name() + ": " + e.message(), e);
        }
    }

    private @Nullable Object value(String name) {
        Object own = ownValue(name);
        return own == null && inherited != null ? inherited.value(name) : own;
    }

    private @Nullable Object ownValue(String name) {
        return document.override(fullKey(name)).orElseGet(() -> plain(table.get(List.of(name))));
    }

    /** Returns the value of a key that may be uncertain, with its name. */
    Input input(Key<Uncertain> key) {
        return input(key, get(key));
    }

    /** Returns what may be uncertain in the value of a key, with the key's name. */
    Input input(Key<?> key, Uncertain value) {
        return new Input(Uncertain.isUncertain(value) ? noteUncertain(key) : fullKey(key.name()), value);
    }

    /** Notes that a key's value is drawn, and returns the name under which it is. */
    String noteUncertain(Key<?> key) {
        document.noteUncertain(fullKey(key.name()));
        return fullKey(key.name());
    }

    /** Returns whether a key stands in the file. */
    boolean has(Key<?> key) {
        return value(key.name()) != null;
    }

    /** Returns whether a key stands in the file with a value that can be read. */
    boolean isReadable(Key<?> key) {
        Object value = value(key.name());
        return value != null && key.kind().canRead(value);
    }

    /** Returns the section below a heading; if it is missing, that is a problem. */
    Section part(Group part) {
        return findPart(part).orElseGet(() -> {
            if (mayComplain(part.name())) {
                String heading = "[" + heading(fullKey(part.name())) + "]";
                document.add(position, fullKey(part.name()), "is missing", "add a section with the heading " + heading);
            }
            return standIn(part);
        });
    }

    /** Returns the section below a heading if it stands in the file. */
    Optional<Section> findPart(Group part) {
        Object value = table.get(List.of(part.name()));
        if (value instanceof TomlTable below) {
            return Optional.of(of(document, fullKey(part.name()), below, positionOf(part.name()), part));
        }
        if (value != null) {
            document.add(
                    positionOf(part.name()),
                    fullKey(part.name()),
                    "is not a section",
                    "write it as a heading: [" + heading(fullKey(part.name())) + "]");
            return Optional.of(standIn(part));
        }
        if (document.overridesBelow(fullKey(part.name()))) {
            return Optional.of(empty(part));
        }
        return inherited == null ? Optional.empty() : inherited.findPart(part);
    }

    /** Returns the section below a heading; if it is not in the file, an empty one whose missing keys are problems. */
    Section partAsIs(Group part) {
        return findPart(part).orElseGet(() -> empty(part));
    }

    private Section empty(Group part) {
        return of(document, fullKey(part.name()), Toml.parse(""), position, part);
    }

    /** Returns the section below a heading; an empty one, all of whose keys may be missing, if it is not in the file. */
    Section partOrEmpty(Group part) {
        return findPart(part).orElseGet(() -> standIn(part));
    }

    /** Returns the sections of a repeated heading, in order; none if it is missing. */
    List<Section> parts(Group part) {
        Object value = table.get(List.of(part.name()));
        if (value == null) {
            return inherited == null ? List.of() : inherited.parts(part);
        }
        if (!(value instanceof TomlArray array)
                || !IntStream.range(0, array.size()).allMatch(i -> array.get(i) instanceof TomlTable)) {
            document.add(
                    positionOf(part.name()),
                    fullKey(part.name()),
                    "is not a list of sections",
                    "write it as a heading: [[" + heading(fullKey(part.name())) + "]]");
            return List.of(standIn(part));
        }
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            String heading = fullKey(part.name()) + "." + (i + 1);
            sections.add(of(document, heading, array.getTable(i), array.inputPositionOf(i), part));
        }
        return sections;
    }

    /** Returns the sections of a repeated heading of which there must be one. */
    List<Section> someParts(Group part) {
        List<Section> found = parts(part);
        if (!found.isEmpty()) {
            return found;
        }
        if (mayComplain(part.name())) {
            document.add(
                    position,
                    fullKey(part.name()),
                    "is missing",
                    "add a section with the heading [[" + heading(fullKey(part.name())) + "]]");
        }
        return List.of(standIn(part));
    }

    /** Refuses keys that no section below this one has, whether those sections are used or not. */
    void checkParts() {
        for (Group part : group.parts()) {
            Object value = table.get(List.of(part.name()));
            if (value instanceof TomlArray) {
                parts(part).forEach(Section::checkParts);
            } else if (value != null) {
                findPart(part).ifPresent(Section::checkParts);
            }
        }
    }

    private Section standIn(Group part) {
        return new Section(document, fullKey(part.name()), Toml.parse(""), position, part, true, null);
    }

    /** Returns this section read with the keys of another group. */
    Section as(Group other) {
        Section same = new Section(document, path, table, position, other, isStandIn, inherited);
        same.checkKeys();
        return same;
    }

    /** Returns this section with the values and sections of another one for those that it leaves out. */
    Section inheriting(Section other) {
        return new Section(document, path, table, position, group, isStandIn, other);
    }

    /**
     * Builds a record from this section's keys. Where the record refuses a value, that is a problem of the key that
     * fills it, and the record is built again with the key's example.
     *
     * @param building builds the record, reading the keys afresh each time
     */
    <T> T build(Supplier<T> building) {
        while (true) {
            try {
                return building.get();
            } catch (OutOfRange e) {
                refuse(e);
            }
        }
    }

    private void refuse(OutOfRange refusal) {
        Complaint complaint = new Complaint(refusal, group);
        Optional<Key<?>> guilty = complaint.key().filter(this::isStated);
        if (guilty.isPresent()) {
            Object value = guilty.map(key -> value(key.name()))
                    .or(guilty.get()::otherwise)
                    .orElseThrow();
            String message = complaint.demand() + ", but is " + Kind.shown(value);
            problem(guilty.get(), message, remedy(guilty.get(), value));
            replaced.add(guilty.get().name());
        } else if (!isGivenUp()) {
            // A stand-in that doesn't go with the other values is no fault of the file: its key has its problem
            // already.
            if (complaint.key().filter(key -> replaced.contains(key.name())).isEmpty()) {
                problem(complaint.demand(), "");
            }
            group.keys().forEach(key -> replaced.add(key.name()));
        } else {
            throw new NoStandIn(path, refusal);
        }
    }

    private boolean isStated(Key<?> key) {
        return !replaced.contains(key.name()) && (has(key) || key.otherwise().isPresent());
    }

    /** Returns whether no value of the file is used any more, since together they made no sense. */
    boolean isGivenUp() {
        return replaced.size() == group.keys().size();
    }

    private String remedy(Key<?> key, Object value) {
        if (find(key).filter(Uncertain::isUncertain).isPresent()) {
            return "every value that can be drawn must be possible: narrow the distribution";
        }
        return key.kind().isShare() ? Kind.percentMeantBy(value) : "";
    }

    /** Adds a problem with the value of a key. */
    void problem(Key<?> key, String message, String remedy) {
        if (inherited != null && ownValue(key.name()) == null && inherited.has(key)) {
            inherited.problem(key, message, remedy);
            return;
        }
        document.add(positionOf(key.name()), fullKey(key.name()), message, remedy);
    }

    /** Adds a warning about the value of a key. */
    void warn(Key<?> key, String oddity) {
        Object value = value(key.name());
        document.warn(
                positionOf(key.name()),
                fullKey(key.name()),
                (value == null ? "" : Kind.shown(value) + " ") + oddity,
                "change it unless you mean it");
    }

    /** Returns where the value of a key stands. */
    Place place(Key<?> key) {
        return document.place(positionOf(key.name()), fullKey(key.name()));
    }

    /** Adds a problem with one entry of a key's list. */
    void problemOfEntry(Key<?> key, int index, String message, String remedy) {
        Object value = table.get(List.of(key.name()));
        boolean isInFile = value instanceof TomlArray array && index < array.size();
        TomlPosition place = isInFile ? ((TomlArray) value).inputPositionOf(index) : positionOf(key.name());
        document.add(place, fullKey(key.name()), message, remedy);
    }

    /** Adds a problem with the section as a whole. */
    void problem(String message, String remedy) {
        document.add(position, path, message, remedy);
    }

    /** Returns whether something missing is a problem here, and not just a consequence of one. */
    boolean mayComplain() {
        return !isStandIn && !document.isBroken();
    }

    private boolean mayComplain(String name) {
        return !isStandIn && !document.isBroken() && !FormerNames.areOf(name, table.keySet());
    }

    private TomlPosition positionOf(String name) {
        TomlPosition found = table.inputPositionOf(List.of(name));
        return found == null ? position : found;
    }

    private static String heading(String fullKey) {
        return fullKey.replaceAll("\\.\\d+", "");
    }

    private String fullKey(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Returns a value of the file with lists as lists of Java. */
    static @Nullable Object plain(@Nullable Object value) {
        return value instanceof TomlArray array ? array.toList() : value;
    }
}
