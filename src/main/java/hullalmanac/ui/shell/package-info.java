/** The window around its places. Start at {@link hullalmanac.ui.shell.MainWindow}. */
package hullalmanac.ui.shell;
