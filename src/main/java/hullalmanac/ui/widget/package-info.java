/** Components that several places use. Nothing here knows a place. */
package hullalmanac.ui.widget;
