package org.ionohaul.channel;

import java.util.List;

/**
 * Propagation as the standards name it: two paths of equal mean power that fade independently, without Doppler shift.
 *
 * <p>Sources: ITU-R F.1487 (2000), Annex 3, for the conditions by latitude; ITU-R F.520 for good, moderate, poor and
 * flutter. In both the frequency spread is twice the standard deviation (2 sigma) of a Gaussian Doppler power spectrum.
 */
public enum FadingCondition implements Named {
    /** One path that does not fade. */
    FLAT("no fading", 0, 0),
    /** ITU-R F.1487, low latitudes, quiet. */
    LOW_LATITUDE_QUIET("ITU-R F.1487", 0.5, 0.5),
    /** ITU-R F.1487, low latitudes, moderate. */
    LOW_LATITUDE_MODERATE("ITU-R F.1487", 2, 1.5),
    /** ITU-R F.1487, low latitudes, disturbed. */
    LOW_LATITUDE_DISTURBED("ITU-R F.1487", 6, 10),
    /** ITU-R F.1487, mid latitudes, quiet. */
    MID_LATITUDE_QUIET("ITU-R F.1487", 0.5, 0.1),
    /** ITU-R F.1487, mid latitudes, moderate. */
    MID_LATITUDE_MODERATE("ITU-R F.1487", 1, 0.5),
    /** ITU-R F.1487, mid latitudes, disturbed. */
    MID_LATITUDE_DISTURBED("ITU-R F.1487", 2, 1),
    /** ITU-R F.1487, mid latitudes, disturbed, near-vertical incidence. */
    MID_LATITUDE_DISTURBED_NVIS("ITU-R F.1487", 7, 1),
    /** ITU-R F.1487, high latitudes, quiet. */
    HIGH_LATITUDE_QUIET("ITU-R F.1487", 1, 0.5),
    /** ITU-R F.1487, high latitudes, moderate. */
    HIGH_LATITUDE_MODERATE("ITU-R F.1487", 3, 10),
    /** ITU-R F.1487, high latitudes, disturbed. */
    HIGH_LATITUDE_DISTURBED("ITU-R F.1487", 7, 30),
    /** ITU-R F.520, good conditions. */
    GOOD("ITU-R F.520", 0.5, 0.1),
    /** ITU-R F.520, moderate conditions. */
    MODERATE("ITU-R F.520", 1, 0.5),
    /** ITU-R F.520, poor conditions. */
    POOR("ITU-R F.520", 2, 1),
    /** ITU-R F.520, flutter fading. */
    FLUTTER("ITU-R F.520", 0.5, 10);

    private final String source;
    private final double delayMillis;
    private final double spreadHz;

    FadingCondition(String source, double delayMillis, double spreadHz) {
        this.source = source;
        this.delayMillis = delayMillis;
        this.spreadHz = spreadHz;
    }

    /** Returns the document that defines the condition. */
    public String source() {
        return source;
    }

    /** Returns the paths. */
    public List<PropagationPath> paths() {
        PropagationPath first = new PropagationPath(0, 0, 0, spreadHz);
        return this == FLAT ? List.of(first) : List.of(first, new PropagationPath(delayMillis / 1000, 0, 0, spreadHz));
    }
}
