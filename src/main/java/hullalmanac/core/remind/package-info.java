/**
 * Reminders: which boats somebody is to be told of, where each telling stands, and what is written
 * down of it. Start at {@link hullalmanac.core.remind.Reminding}. When a coat is due is reckoned
 * elsewhere.
 */
package hullalmanac.core.remind;
