/** What needs doing now. Start at {@link hullalmanac.ui.ahead.AheadPanel}. */
package hullalmanac.ui.ahead;
