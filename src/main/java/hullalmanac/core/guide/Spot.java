package hullalmanac.core.guide;

/**
 * A page, or a place on it.
 *
 * @param page its id
 * @param anchor empty for the top
 */
public record Spot(String page, String anchor) {}
