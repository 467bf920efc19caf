/** The boats and their pages. Start at {@link hullalmanac.ui.boats.BoatsPanel}. */
package hullalmanac.ui.boats;
