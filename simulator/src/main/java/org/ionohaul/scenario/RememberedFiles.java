package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.tomlj.TomlParseResult;

/** Files that are read and taken apart once, however many scenarios are made of them. */
final class RememberedFiles implements SourceFiles {
    private final SourceFiles files;
    private final Map<Path, String> texts = new ConcurrentHashMap<>();
    private final Map<String, TomlParseResult> parsed = new ConcurrentHashMap<>();
    private final Map<Path, ModeFiles.Read> modes = new ConcurrentHashMap<>();

    RememberedFiles(SourceFiles files) {
        this.files = files;
    }

    /**
     * Takes a text from any files apart.
     *
     * @throws BrokenSyntax if it can't be understood at all
     */
    static TomlParseResult parsed(SourceFiles files, String text) throws BrokenSyntax {
        return files instanceof RememberedFiles remembered ? remembered.parsed(text) : BrokenSyntax.parse(text);
    }

    private TomlParseResult parsed(String text) throws BrokenSyntax {
        TomlParseResult known = parsed.get(text);
        if (known == null) {
            known = BrokenSyntax.parse(text);
            parsed.put(text, known);
        }
        return known;
    }

    /** Returns what reading a mode file comes to; read once if nothing in it is replaced. */
    static ModeFiles.Read mode(SourceFiles files, Path file, Map<String, String> overrides) {
        return files instanceof RememberedFiles remembered && overrides.isEmpty()
                ? remembered.modes.computeIfAbsent(file, it -> ModeFiles.Read.of(it, files, overrides))
                : ModeFiles.Read.of(file, files, overrides);
    }

    @Override
    public String text(Path file) throws IOException {
        String known = texts.get(file);
        if (known == null) {
            known = files.text(file);
            texts.put(file, known);
        }
        return known;
    }

    @Override
    public String table(Path file) throws IOException {
        return files.table(file);
    }

    @Override
    public boolean exists(Path file) {
        return files.exists(file);
    }

    @Override
    public boolean isFile(Path file) {
        return files.isFile(file);
    }

    @Override
    public Path place(Path file) throws IOException {
        return files.place(file);
    }

    @Override
    public List<Path> in(Path folder) throws IOException {
        return files.in(folder);
    }
}
