/** What needs doing now. Start at {@link hullalmanac.present.ahead.AheadPresenter}. */
package hullalmanac.present.ahead;
