package org.ionohaul.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Where the texts of scenario and mode files come from: the disk, or memory. */
public interface SourceFiles {
    /** A file that is larger was not written by hand. */
    int MOST_BYTES = 1_000_000;

    /** A table may be written by a program. */
    int MOST_BYTES_OF_TABLE = 200_000_000;

    /** The files of the disk. */
    SourceFiles DISK = new SourceFiles() {
        @Override
        public String text(Path file) throws IOException {
            return text(file, MOST_BYTES);
        }

        @Override
        public String table(Path file) throws IOException {
            return text(file, MOST_BYTES_OF_TABLE);
        }

        private String text(Path file, int most) throws IOException {
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(most + 1);
                if (bytes.length > most) {
                    throw new FileSystemException(file.toString(), null, "is larger than " + most / 1_000_000 + " MB");
                }
                return StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString();
            }
        }

        @Override
        public boolean isFile(Path file) {
            return Files.isRegularFile(file);
        }

        @Override
        public Path place(Path file) throws IOException {
            return file.toRealPath();
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
     * @throws IOException if there is no such file, or it is no text in UTF-8 or larger than {@link #MOST_BYTES}
     */
    String text(Path file) throws IOException;

    /**
     * Returns the text of a table, which may be larger than others.
     *
     * @throws IOException if there is no such file, or it is no text in UTF-8 or larger than {@link #MOST_BYTES_OF_TABLE}
     */
    default String table(Path file) throws IOException {
        return text(file);
    }

    /** Returns whether there is a file or folder of this name. */
    boolean exists(Path file);

    /** Returns whether there is a file of this name that is neither a folder nor a pipe or device. */
    default boolean isFile(Path file) {
        return exists(file);
    }

    /**
     * Returns where a file really is, links followed.
     *
     * @throws IOException if there is no such file
     */
    default Path place(Path file) throws IOException {
        return file.toAbsolutePath().normalize();
    }

    /** Returns whether a file really lies in a folder or below it, links followed; false if that can't be told. */
    default boolean isWithin(Path folder, Path file) {
        try {
            return place(file).startsWith(place(folder.toAbsolutePath().normalize()));
        } catch (IOException e) {
            return false;
        }
    }

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
            public String table(Path asked) throws IOException {
                return asked.equals(file) ? text : others.table(asked);
            }

            @Override
            public boolean exists(Path asked) {
                return asked.equals(file) || others.exists(asked);
            }

            @Override
            public boolean isFile(Path asked) {
                return asked.equals(file) || others.isFile(asked);
            }

            @Override
            public Path place(Path asked) throws IOException {
                return asked.equals(file) ? asked.toAbsolutePath().normalize() : others.place(asked);
            }

            @Override
            public List<Path> in(Path folder) throws IOException {
                return others.in(folder);
            }
        };
    }

    /** Returns these files as each was when it was first read: many scenarios are made of them soon, and all of the same texts. */
    default SourceFiles remembered() {
        return new RememberedFiles(this);
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
