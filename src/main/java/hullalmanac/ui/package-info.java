/**
 * The window: a folder a place, each with a panel that renders a state and decides nothing.
 *
 * <p>Start at {@link hullalmanac.ui.shell.MainWindow}. Nothing here touches a file or the record.
 */
package hullalmanac.ui;
