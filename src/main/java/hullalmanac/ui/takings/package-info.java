/** The money, as a panel. */
package hullalmanac.ui.takings;
