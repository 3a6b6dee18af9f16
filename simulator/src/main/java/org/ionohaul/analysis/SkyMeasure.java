package org.ionohaul.analysis;

import org.ionohaul.trial.EndSky;

/** A number that tells one trial's sky at one end from another's. */
public enum SkyMeasure {
    /** The SINR that half of the time is above, in dB. */
    MIDDLE_SINR_DB,
    /** The SINR that nine tenths of the time are above, in dB. */
    WORST_TENTH_SINR_DB,
    /** Share of the time that other stations are stronger than the noise floor. */
    OCCUPIED_SHARE;

    double of(EndSky sky) {
        return switch (this) {
            case MIDDLE_SINR_DB -> sky.middleSinrDb();
            case WORST_TENTH_SINR_DB -> sky.worstTenthSinrDb();
            case OCCUPIED_SHARE -> sky.occupiedShare();
        };
    }
}
