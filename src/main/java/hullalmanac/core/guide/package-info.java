/**
 * The guide as values: its pages, where links lead, which pages have some words. Start at {@link
 * hullalmanac.core.guide.Guide}. Reading its files does not belong here.
 */
package hullalmanac.core.guide;
