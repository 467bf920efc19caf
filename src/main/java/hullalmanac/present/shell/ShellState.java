package hullalmanac.present.shell;

import java.util.Optional;

/**
 * What the window shows around its places.
 *
 * @param place the place shown
 * @param status the line at the bottom
 * @param trouble a sentence about what went wrong, while it stands
 */
public record ShellState(Place place, String status, Optional<String> trouble) {}
