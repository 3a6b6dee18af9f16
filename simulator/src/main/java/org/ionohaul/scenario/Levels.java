package org.ionohaul.scenario;

/**
 * Levels at a receiver's input, where a scenario states them and not just their ratio.
 *
 * @param signalDbm a steady carrier of the other station at full power, when send is pressed
 * @param noiseDbm the noise in 3 kHz then
 */
public record Levels(double signalDbm, double noiseDbm) {}
