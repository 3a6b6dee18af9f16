package org.ionohaul.study;

import org.ionohaul.session.SessionResult;

/**
 * One trial's line in a study.
 *
 * @param trial the trial's number, from 0
 * @param result what its session came to
 */
public record TrialRow(long trial, SessionResult result) {}
