package hullalmanac.core.life;

import hullalmanac.core.record.Finding;

/**
 * A finding that is charted but does not move the date.
 *
 * @param why in words, to stand after "not used:"
 */
public record Unused(Finding finding, String why) {}
