package hullalmanac.core.life;

import java.time.LocalDate;

/**
 * Gloss of a coat as the model sees it on a day, in gloss units at the angle of its first reading.
 *
 * @param middle the middle value
 * @param low50 lower end of the half of the chances in the middle
 * @param low80 lower end of eight chances in ten
 */
public record GlossPoint(
    LocalDate day, double middle, double low50, double high50, double low80, double high80) {}
