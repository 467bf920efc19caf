package hullalmanac.present.shell;

import hullalmanac.present.table.TableChoices;

/**
 * Where the window stood and how it looked.
 *
 * @param x left edge, in the screen's units, when not maximised
 * @param dark whether it was dark
 * @param zoom 0.8 to 2.0
 * @param wetHands whether what one touches was at least 48 px high
 * @param tables how one wanted the columns of tables
 */
public record WindowLook(
    int x,
    int y,
    int width,
    int height,
    boolean maximised,
    boolean dark,
    float zoom,
    boolean wetHands,
    TableChoices tables) {}
