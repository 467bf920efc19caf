/**
 * Dates, chances and surfaces in plain words. Start at {@link
 * hullalmanac.present.words.ForecastWords}.
 */
package hullalmanac.present.words;
