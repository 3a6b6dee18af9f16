package org.ionohaul.nextrun;

import java.util.List;
import org.ionohaul.fieldlog.LoggedRun;
import org.ionohaul.placing.SimulatedRun;

/** What modes and candidates come to under any scores of what is not known; asked from several threads. */
interface World {
    /** Returns the unknowns on scales on which their effect is most nearly straight. */
    double[] straightened(double[] scores);

    /** Returns how many modes there are to choose from, 1 or more. */
    int modes();

    /**
     * Returns what is sent with a mode in the end, on a day that is not in the log.
     *
     * @param number which simulation it is: the chance in it is its own, but shared by the modes
     */
    SimulatedRun chosen(int mode, double[] scores, long number);

    /** Returns what may be done next. */
    List<Candidate> candidates();

    /** Returns a run as it will be logged. */
    LoggedRun plan(Candidate.Send send);

    /** Returns what a run comes to. */
    SimulatedRun sent(Candidate.Send send, double[] scores, long number);

    /** Returns what a meter without an error would show, in dB or dBm. */
    double shown(Candidate.Listen listen, double[] scores, long number);
}
