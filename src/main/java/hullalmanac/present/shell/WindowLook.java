package hullalmanac.present.shell;

import hullalmanac.present.Look;

/**
 * Where the window stood and how it looked.
 *
 * @param x left edge, in the screen's units, when not maximised
 */
public record WindowLook(int x, int y, int width, int height, boolean maximised, Look look) {}
