package org.ionohaul.fieldlog;

/** Which way a noted time was rounded. */
public enum Rounding {
    /** To the nearest step. */
    NEAREST,
    /** To the step before: whole steps that have passed. */
    DOWN,
    /** To the step after: a begun step counts. */
    UP
}
