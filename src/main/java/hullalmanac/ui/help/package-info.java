/** Help on the screen. Start at {@link hullalmanac.ui.help.HelpPanel}; it decides nothing. */
package hullalmanac.ui.help;
