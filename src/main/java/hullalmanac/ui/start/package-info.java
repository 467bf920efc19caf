/** The first window. Start at {@link hullalmanac.ui.start.StartWindow}. */
package hullalmanac.ui.start;
