/**
 * Changes, times and letters in plain words. Start at {@link
 * hullalmanac.present.words.ChangeWords}; dates and chances are in {@link
 * hullalmanac.core.report.ForecastWords}.
 */
package hullalmanac.present.words;
