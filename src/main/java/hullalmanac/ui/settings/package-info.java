/** The place for settings. Start at {@link hullalmanac.ui.settings.SettingsPanel}. */
package hullalmanac.ui.settings;
