package dev.treen.wood;

/**
 * Air of a temperature and a dampness.
 *
 * @param temperature in degrees Celsius
 * @param humidity relative humidity in percent
 */
public record Air(double temperature, double humidity) {}
