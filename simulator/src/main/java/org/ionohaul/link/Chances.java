package org.ionohaul.link;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * Where the chance in a link comes from, one stream a purpose, so that a draw more for one purpose shifts no other.
 *
 * @param detection whether bursts are found
 * @param decoding whether frames are decoded
 * @param snrEstimate errors of measured SNR
 * @param dialling waits for a clear channel
 * @param policy choices of the rate policy
 * @param replies what becomes of answers that are one of two words
 */
public record Chances(
        UniformRandomProvider detection,
        UniformRandomProvider decoding,
        UniformRandomProvider snrEstimate,
        UniformRandomProvider dialling,
        UniformRandomProvider policy,
        UniformRandomProvider replies) {}
