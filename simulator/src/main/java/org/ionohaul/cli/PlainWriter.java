package org.ionohaul.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import org.ionohaul.scenario.PlainText;

/**
 * What a command prints on the terminal: texts from scenario and mode files, which somebody else may have written, go
 * through here and come out as {@link PlainText}; ends of lines pass.
 */
final class PlainWriter extends FilterWriter {
    PlainWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int character) throws IOException {
        write(Character.toString(character), 0, 1);
    }

    @Override
    public void write(char[] characters, int offset, int length) throws IOException {
        write(new String(characters, offset, length), 0, length);
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        String piece = text.substring(offset, offset + length);
        int from = 0;
        for (int end = piece.indexOf('\n'); end >= 0; end = piece.indexOf('\n', from)) {
            boolean isPair = end > from && piece.charAt(end - 1) == '\r';
            out.write(PlainText.of(piece.substring(from, isPair ? end - 1 : end)));
            out.write(isPair ? "\r\n" : "\n");
            from = end + 1;
        }
        out.write(PlainText.of(piece.substring(from)));
    }
}
