/** Colours, font and zoom of the window. Start at {@link hullalmanac.ui.theme.Theme}. */
package hullalmanac.ui.theme;
