/**
 * What work costs: prices by length, prices by time and materials, the gap between the two, what an
 * hour earns, and bills with discounts and taxes to the minor unit.
 *
 * <p>Start at {@link hullalmanac.core.price.Bill} for what is charged, and at {@link
 * hullalmanac.core.price.PriceGap} for the two prices side by side. Areas, minutes and quantities
 * come in as values. All money is exact decimal arithmetic; no floating-point number becomes money.
 */
package hullalmanac.core.price;
