package org.ionohaul.scenario;

/**
 * One file to send.
 *
 * @param name what people call it
 * @param bytes size as it goes on the air, after any compression, 1 or more
 */
public record PayloadFile(String name, long bytes) {}
