package hullalmanac.present.shell;

import hullalmanac.present.Look;
import hullalmanac.present.table.TableChoices;

/**
 * Where the window stood and how it looked.
 *
 * @param x left edge, in the screen's units, when not maximised
 * @param tables how one wanted the columns of tables
 */
public record WindowLook(
    int x, int y, int width, int height, boolean maximised, Look look, TableChoices tables) {}
