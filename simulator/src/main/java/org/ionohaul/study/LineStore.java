package org.ionohaul.study;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Lines of text that pieces of work come to, in order of the pieces, kept in a {@link Journal} so that neither memory nor a death
 * of the program sets a limit to how many there are. A line has no line break in it.
 */
public final class LineStore implements TrialSink<List<String>> {
    private static final int PIECES_A_BLOCK = 100;

    private final Journal journal;
    private final String section;
    private int pieces;
    private boolean isBrokenOff;

    /** A place for lines, one after the other. */
    @FunctionalInterface
    public interface Lines {
        /**
         * Takes a line.
         *
         * @throws IOException if there is no room for it
         */
        void take(String line) throws IOException;
    }

    private LineStore(Journal journal, String section, int pieces) {
        this.journal = journal;
        this.section = section;
        this.pieces = pieces;
    }

    /**
     * Returns the store of the lines that stand in a journal, to which others are added.
     *
     * @param section which of the journal's blocks
     * @throws IOException if the journal can't be read
     */
    public static LineStore in(Journal journal, String section) throws IOException {
        int pieces = 0;
        for (Journal.Entry entry : journal.entries(section)) {
            pieces += journal.copy(entry).getInt();
        }
        return new LineStore(journal, section, pieces);
    }

    /** Returns how many pieces of work are done. */
    @Override
    public int trials() {
        return pieces;
    }

    @Override
    public int trialsABlock() {
        return PIECES_A_BLOCK;
    }

    /**
     * Adds what some pieces came to.
     *
     * @param block of each piece its lines; none if it was broken off, then it and what follows it stay undone
     * @throws NoRoomForTrials if the journal can't be written
     */
    @Override
    public void append(List<List<String>> block) {
        List<List<String>> whole = isBrokenOff
                ? List.of()
                : block.stream().takeWhile(it -> !it.isEmpty()).toList();
        isBrokenOff |= whole.size() < block.size();
        if (whole.isEmpty()) {
            return;
        }
        byte[] text = whole.stream()
                .flatMap(List::stream)
                .map(line -> line + "\n")
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
        try {
            journal.append(
                    section,
                    ByteBuffer.allocate(Integer.BYTES + text.length)
                            .putInt(whole.size())
                            .put(text)
                            .flip());
            pieces += whole.size();
        } catch (IOException e) {
            throw new NoRoomForTrials(journal, e);
        }
    }

    @Override
    public void force() {
        try {
            journal.force();
        } catch (IOException e) {
            throw new NoRoomForTrials(journal, e);
        }
    }

    /**
     * Hands on all lines in order.
     *
     * @throws IOException if the journal can't be read, or the taker refuses
     */
    public void forEach(Lines lines) throws IOException {
        for (Journal.Entry entry : journal.entries(section)) {
            ByteBuffer block = journal.copy(entry);
            block.getInt();
            for (String line :
                    StandardCharsets.UTF_8.decode(block).toString().lines().toList()) {
                lines.take(line);
            }
        }
    }
}
