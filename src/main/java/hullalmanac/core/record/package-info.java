/**
 * The values a record holds, in the words of the trade: boats, surfaces, berths, visits, steps,
 * coats, findings and what goes with them, and the whole of a record as one {@link
 * hullalmanac.core.record.Almanac}.
 *
 * <p>Start at {@code Almanac}. Every value checks itself when it is made; rules that need more than
 * one row are in {@link hullalmanac.core.record.RecordRules}. No files, no clock, no reckoning
 * belong here.
 */
package hullalmanac.core.record;
