package org.ionohaul.study;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;

/**
 * The rows of a study, in order of trial, in blocks of some hundred trials. The first {@value #MOST_IN_MEMORY} bytes stay
 * in memory; what comes after goes to a temporary file and is read from there, so that memory does not grow with the
 * number of trials.
 *
 * <p>A block is written first and mapped afterwards, so that a full disk is an error and not a fault of the machine. The
 * file has no name any more from the beginning or, on Windows, goes with the program.
 */
final class RowStore {
    private static final int MOST_IN_MEMORY = 16_000_000;
    /** How many trials are best added at once. */
    static final int TRIALS_A_BLOCK = 250;

    private final List<Block> blocks = new ArrayList<>();
    private Optional<FileChannel> file = Optional.empty();
    private int inMemory;
    private int trials;

    /** Where a trial's rows come from. */
    @FunctionalInterface
    interface Source<E extends Exception> {
        /** Returns the bytes of a trial's rows. */
        List<byte[]> rows(int trial) throws E;
    }

    /** Some trials one after the other: where each row begins (4 bytes each), then the rows. */
    private record Block(int firstTrial, int trials, int columns, ByteBuffer bytes) {
        TrialRow row(int trial, int column) {
            int number = (trial - firstTrial) * columns + column;
            return new TrialRow(bytes, bytes.getInt(number * Integer.BYTES));
        }
    }

    /**
     * Returns a store of trials that are there already; asks for them in order.
     *
     * @throws E if the source does
     * @throws NoRoomForTrials if the temporary file can't be written
     */
    static <E extends Exception> RowStore of(int trials, Source<E> source) throws E {
        RowStore store = new RowStore();
        List<List<byte[]>> block = new ArrayList<>();
        for (int trial = 0; trial < trials; trial++) {
            block.add(source.rows(trial));
            if (block.size() == TRIALS_A_BLOCK || trial == trials - 1) {
                store.append(block);
                block.clear();
            }
        }
        return store;
    }

    /** Returns how many trials there are. */
    int trials() {
        return trials;
    }

    /**
     * Adds trials.
     *
     * @param rowsByTrial of each trial its rows' bytes, equally many
     * @throws NoRoomForTrials if the temporary file can't be written
     */
    void append(List<List<byte[]>> rowsByTrial) {
        if (rowsByTrial.isEmpty()) {
            return;
        }
        blocks.add(new Block(trials, rowsByTrial.size(), rowsByTrial.get(0).size(), kept(packed(rowsByTrial))));
        trials += rowsByTrial.size();
    }

    /**
     * Returns the rows at one place of every trial: a view that makes a row when it is asked for.
     *
     * @param column place in the trial
     * @param count of how many trials, at most {@link #trials()}
     */
    List<TrialRow> column(int column, int count) {
        return new Column(List.copyOf(blocks), column, count);
    }

    private static ByteBuffer packed(List<List<byte[]>> rowsByTrial) {
        List<byte[]> rows = rowsByTrial.stream().flatMap(List::stream).toList();
        int start = rows.size() * Integer.BYTES;
        ByteBuffer packed = ByteBuffer.allocate(
                start + rows.stream().mapToInt(row -> row.length).sum());
        for (byte[] row : rows) {
            packed.putInt(start);
            start += row.length;
        }
        rows.forEach(packed::put);
        return packed.flip();
    }

    private ByteBuffer kept(ByteBuffer block) {
        if (block.remaining() <= MOST_IN_MEMORY - inMemory) {
            inMemory += block.remaining();
            return block;
        }
        try {
            return onDisk(block);
        } catch (IOException e) {
            throw new NoRoomForTrials(e);
        }
    }

    private ByteBuffer onDisk(ByteBuffer block) throws IOException {
        if (file.isEmpty()) {
            file = Optional.of(temporaryFile());
        }
        FileChannel channel = file.get();
        long start = channel.size();
        int length = block.remaining();
        while (block.hasRemaining()) {
            channel.write(block, start + block.position());
        }
        return channel.map(FileChannel.MapMode.READ_ONLY, start, length);
    }

    private static FileChannel temporaryFile() throws IOException {
        Path path = Files.createTempFile("ionohaul", ".rows");
        return FileChannel.open(
                path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    }

    private static final class Column extends AbstractList<TrialRow> implements RandomAccess {
        private final List<Block> blocks;
        private final int column;
        private final int size;

        private Column(List<Block> blocks, int column, int size) {
            this.blocks = blocks;
            this.column = column;
            this.size = size;
        }

        @Override
        public TrialRow get(int trial) {
            if (trial < 0 || trial >= size) {
                throw new IndexOutOfBoundsException(trial);
            }
            return blockOf(trial).row(trial, column);
        }

        @Override
        public int size() {
            return size;
        }

        private Block blockOf(int trial) {
            int low = 0;
            int high = blocks.size() - 1;
            while (low < high) {
                int middle = (low + high + 1) >>> 1;
                if (blocks.get(middle).firstTrial() <= trial) {
                    low = middle;
                } else {
                    high = middle - 1;
                }
            }
            return blocks.get(low);
        }
    }
}
