package org.ionohaul.study;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.RandomAccess;

/**
 * The rows of a study, in order of trial, in blocks of some trials. The first {@value #MOST_IN_MEMORY} bytes stay in
 * memory; what comes after is read from a {@link Journal}, so that memory does not grow with the number of trials. In a
 * journal with a name every block is written, so that the study can go on with them.
 *
 * <p>A block is written first and mapped afterwards, so that a full disk is an error and not a fault of the machine.
 */
public final class RowStore implements TrialSink<List<byte[]>> {
    private static final int MOST_IN_MEMORY = 16_000_000;

    /** How many trials are best added at once, in memory and beyond: there each block is mapped by itself. */
    private static final int TRIALS_A_BLOCK = 25;

    private static final int TRIALS_A_MAPPED_BLOCK = 250;

    /** What stands before the rows of a block: first trial, number of trials, rows a trial. */
    private static final int HEAD = 3 * Integer.BYTES;

    private final Journal journal;
    private final String section;
    private final List<Block> blocks = new ArrayList<>();
    private int inMemory;
    private boolean isBeyondMemory;
    private int trials;

    /** Some trials one after the other: where each row begins, from the first of them (4 bytes each), then the rows. */
    private record Block(int firstTrial, int trials, int columns, ByteBuffer bytes) {
        /** Views a block with its head. */
        static Block of(ByteBuffer packed) {
            return new Block(
                    packed.getInt(0),
                    packed.getInt(Integer.BYTES),
                    packed.getInt(2 * Integer.BYTES),
                    packed.slice(HEAD, packed.limit() - HEAD));
        }

        TrialRow row(int trial, int column) {
            int number = (trial - firstTrial) * columns + column;
            return new TrialRow(bytes, bytes.getInt(number * Integer.BYTES));
        }
    }

    private RowStore(Journal journal, String section) {
        this.journal = journal;
        this.section = section;
    }

    /** Returns an empty store that is gone when the program ends. */
    public static RowStore nameless() {
        return new RowStore(Journal.nameless(), "");
    }

    /**
     * Returns the store of the trials that stand in a journal, to which others are added.
     *
     * @param section which of the journal's rows
     * @throws IOException if the journal can't be read
     */
    public static RowStore in(Journal journal, String section) throws IOException {
        RowStore store = new RowStore(journal, section);
        for (Journal.Entry entry : journal.entries(section)) {
            store.add(Block.of(store.hasRoomFor(entry.length()) ? journal.copy(entry) : journal.map(entry)));
        }
        return store;
    }

    @Override
    public int trials() {
        return trials;
    }

    @Override
    public int trialsABlock() {
        return isBeyondMemory ? TRIALS_A_MAPPED_BLOCK : TRIALS_A_BLOCK;
    }

    /**
     * Sees that what was added outlives a power cut, if the journal has a name.
     *
     * @throws NoRoomForTrials if the disk refuses
     */
    @Override
    public void force() {
        try {
            journal.force();
        } catch (IOException e) {
            throw new NoRoomForTrials(journal, e);
        }
    }

    /**
     * Adds trials.
     *
     * @param rowsByTrial of each trial its rows' bytes, equally many
     * @throws NoRoomForTrials if the journal can't be written
     */
    @Override
    public void append(List<List<byte[]>> rowsByTrial) {
        if (rowsByTrial.isEmpty()) {
            return;
        }
        ByteBuffer packed = packed(trials, rowsByTrial);
        try {
            add(Block.of(kept(packed)));
        } catch (IOException e) {
            throw new NoRoomForTrials(journal, e);
        }
    }

    /** Returns how many more trials stay in memory if they are like those so far, at least zero. */
    public int roomInMemory() {
        return trials == 0 ? Integer.MAX_VALUE : (MOST_IN_MEMORY - inMemory) / (inMemory / trials + 1);
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

    private void add(Block block) {
        blocks.add(block);
        trials += block.trials();
    }

    private static ByteBuffer packed(int firstTrial, List<List<byte[]>> rowsByTrial) {
        List<byte[]> rows = rowsByTrial.stream().flatMap(List::stream).toList();
        int start = rows.size() * Integer.BYTES;
        ByteBuffer packed = ByteBuffer.allocate(
                HEAD + start + rows.stream().mapToInt(row -> row.length).sum());
        packed.putInt(firstTrial)
                .putInt(rowsByTrial.size())
                .putInt(rowsByTrial.get(0).size());
        for (byte[] row : rows) {
            packed.putInt(start);
            start += row.length;
        }
        rows.forEach(packed::put);
        return packed.flip();
    }

    private ByteBuffer kept(ByteBuffer packed) throws IOException {
        boolean staysInMemory = hasRoomFor(packed.remaining());
        if (staysInMemory && !journal.isKept()) {
            return packed;
        }
        Journal.Entry entry = journal.append(section, packed.duplicate());
        return staysInMemory ? packed : journal.map(entry);
    }

    /** Returns whether a block may stay in memory, and takes the room for it. */
    private boolean hasRoomFor(int bytes) {
        if (bytes > MOST_IN_MEMORY - inMemory) {
            isBeyondMemory = true;
            return false;
        }
        inMemory += bytes;
        return true;
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
