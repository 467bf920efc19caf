/**
 * Reads what people type into a field and says back what was understood: numbers, lengths, dates.
 * What could mean two things is refused with a sentence that says what to write instead; it is
 * never guessed.
 *
 * <p>Start at {@link hullalmanac.core.entry.Entry}, then {@code NumberEntry}. No clock belongs here
 * (the day of today is given), no default locale, no field of a screen, and no files: those have
 * one strict spelling, see {@link hullalmanac.core.record.Numbers}.
 */
package hullalmanac.core.entry;
