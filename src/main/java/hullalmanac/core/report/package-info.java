/**
 * What is drawn and printed of a record, as values. Start at {@link
 * hullalmanac.core.report.BoatTimeline}.
 */
package hullalmanac.core.report;
