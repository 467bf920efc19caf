/**
 * Calendars as iCalendar files (RFC 5545, RFC 7986): the one that a record tells, and the busy days
 * of any other.
 *
 * <p>Start at {@link hullalmanac.exchange.ical.CalendarFile}. What is told, and how often it was
 * changed, is decided in {@code core.calendar}; this only writes and reads it.
 */
package hullalmanac.exchange.ical;
