/** Finding, laid over the window. Start at {@link hullalmanac.ui.find.FindPanel}. */
package hullalmanac.ui.find;
