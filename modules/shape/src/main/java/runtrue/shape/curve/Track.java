package runtrue.shape.curve;

import java.util.List;

/**
 * The way along a chain, station by station.
 *
 * @param closed whether the last station leads back to the first, which is not repeated then
 */
public record Track(List<Station> stations, boolean closed) {
    public Track {
        stations = List.copyOf(stations);
    }
}
