package hullalmanac.core.reckon;

/**
 * How something is reckoned, to be shown with what came of it.
 *
 * @param text the formula, with what its letters stand for
 * @param source where it comes from; says so where it is common practice without one
 */
public record Formula(String text, String source) {}
