/**
 * What a record tells a calendar: visits, reminders, how long a coat cures, lay-ups; and the days
 * on which another calendar says that one is busy.
 *
 * <p>Start at {@link hullalmanac.core.calendar.CalendarEvents}. How events stand in a file belongs
 * to {@code exchange.ical}; nothing here reads a clock.
 */
package hullalmanac.core.calendar;
