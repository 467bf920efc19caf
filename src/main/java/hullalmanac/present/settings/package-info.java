/**
 * Settings: pages of what a person sets. Start at {@link
 * hullalmanac.present.settings.SettingsPresenter}. What is set of the record is in its business and
 * undone like any other act; what is set of this computer is not in the record and not undone.
 */
package hullalmanac.present.settings;
