package org.ionohaul.analysis;

import java.util.Optional;
import org.ionohaul.study.StudyResult;

/**
 * What is simulated besides a study's own trials.
 *
 * @param sizes trials of files of other sizes, if they were asked for
 * @param rates how fast each mode goes at each SNR, if that was asked for
 * @param isCutShort whether an interruption left anything of it out
 */
public record Besides(Optional<StudyResult> sizes, Optional<NetRates> rates, boolean isCutShort) {
    /** Nothing was asked for. */
    public static final Besides NOTHING = new Besides(Optional.empty(), Optional.empty(), false);
}
