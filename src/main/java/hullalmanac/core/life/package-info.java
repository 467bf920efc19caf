/**
 * What a coat's findings say of its life, what a product's coats say together, and the dates that
 * follow.
 *
 * <p>Start at {@link hullalmanac.core.life.Forecaster}. Nothing here reads a clock: the day of the
 * forecast is passed in.
 */
package hullalmanac.core.life;
