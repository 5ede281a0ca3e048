package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;

/**
 * The air of a room through the year: a range, or a table of twelve months.
 *
 * @param name as the project calls the room; empty for the one of the project block
 * @param humidityLow percent, driest
 * @param humidityHigh percent, dampest
 * @param coldest °C
 * @param warmest °C
 * @param months January first; empty where a range is given
 */
public record RoomClimate(
        String name,
        double humidityLow,
        double humidityHigh,
        double coldest,
        double warmest,
        List<Month> months,
        Span humidityAt,
        Span temperatureAt) {

    /** The mean air of one month: percent and °C. */
    public record Month(double humidity, double temperature) {}

    /** Keeps its own copy. */
    public RoomClimate {
        months = List.copyOf(months);
    }
}
