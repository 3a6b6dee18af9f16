package org.ionohaul.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Where the texts of scenario and mode files come from: the disk, or memory. */
public interface SourceFiles {
    /** The files of the disk. */
    SourceFiles DISK = new SourceFiles() {
        @Override
        public String text(Path file) throws IOException {
            return Files.readString(file);
        }

        @Override
        public boolean exists(Path file) {
            return Files.exists(file);
        }

        @Override
        public List<Path> in(Path folder) throws IOException {
            try (Stream<Path> files = Files.list(folder)) {
                return files.toList();
            }
        }
    };

    /**
     * Returns a file's text.
     *
     * @throws IOException if there is no such file or it is no text in UTF-8
     */
    String text(Path file) throws IOException;

    /** Returns whether there is a file or folder of this name. */
    boolean exists(Path file);

    /**
     * Returns the files in a folder, in any order.
     *
     * @throws IOException if it can't be read
     */
    List<Path> in(Path folder) throws IOException;

    /** Returns these files with one more, or with another text in place of one. */
    default SourceFiles with(Path file, String text) {
        SourceFiles others = this;
        return new SourceFiles() {
            @Override
            public String text(Path asked) throws IOException {
                return asked.equals(file) ? text : others.text(asked);
            }

            @Override
            public boolean exists(Path asked) {
                return asked.equals(file) || others.exists(asked);
            }

            @Override
            public List<Path> in(Path folder) throws IOException {
                return others.in(folder);
            }
        };
    }

    /**
     * Returns files that are held in memory.
     *
     * @param texts what they say, by name, such as {@code river.toml} and {@code modes/quick.toml}
     */
    static SourceFiles of(Map<String, String> texts) {
        Map<String, String> held = Map.copyOf(texts);
        return new SourceFiles() {
            @Override
            public String text(Path file) throws IOException {
                String text = held.get(nameOf(file));
                if (text == null) {
                    throw new NoSuchFileException(file.toString());
                }
                return text;
            }

            @Override
            public boolean exists(Path file) {
                return held.containsKey(nameOf(file));
            }

            @Override
            public List<Path> in(Path folder) {
                return held.keySet().stream()
                        .map(Path::of)
                        .filter(it ->
                                folder.normalize().equals(it.resolveSibling("").normalize()))
                        .toList();
            }

            private static String nameOf(Path file) {
                return file.normalize().toString().replace('\\', '/');
            }
        };
    }
}
