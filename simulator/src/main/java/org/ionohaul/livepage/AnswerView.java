package org.ionohaul.livepage;

import java.util.List;
import org.ionohaul.rendering.Chart;
import org.ionohaul.report.AtAGlance;

/**
 * What is known so far, as its template wants it.
 *
 * @param version changes when there is something new to see
 * @param isOver whether there will be nothing new
 * @param remarks what is to be told beside a control or above the answers
 * @param sides one a setting; empty if nothing can be simulated
 * @param differences what changes from the first setting to the second, a sentence a case
 */
public record AnswerView(
        String version, boolean isOver, List<Remark> remarks, List<Side> sides, List<String> differences) {
    /** Copies the lists. */
    public AnswerView {
        remarks = List.copyOf(remarks);
        sides = List.copyOf(sides);
        differences = List.copyOf(differences);
    }

    /** What looking again and again does to ranges: counted with the very numbers of trials at which there is something to see. */
    public static final String LOOKS =
            "That goes for the last look. Of 100 who watch until 1,000 trials are in, some 32 to 39 see at"
                    + " one look or another a range that does not hold the truth, at the last look 5; names and changes turn in"
                    + " the same way. So go by the last.";

    /**
     * Something that is wrong or odd.
     *
     * @param name of the field that it is about; may be that of none
     * @param text what is to be told
     * @param isProblem whether it keeps the answer away
     */
    public record Remark(String name, String text, boolean isProblem) {}

    /**
     * What one setting comes to.
     *
     * @param name what it is called
     * @param changes what is not as in the file
     * @param progress how many trials stand behind it
     * @param done trials done
     * @param asked trials to come to
     * @param seen what there is to see, at most one; none before the first trials are done
     */
    public record Side(String name, List<String> changes, String progress, int done, int asked, List<Glance> seen) {
        /** Copies the lists. */
        public Side {
            changes = List.copyOf(changes);
            seen = List.copyOf(seen);
        }
    }

    /** What there is to see: the grid with its sentences, and a picture. */
    public record Glance(AtAGlance answer, Chart race) {}
}
