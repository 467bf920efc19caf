/** Tests of reminders. */
package hullalmanac.core.remind;
