/**
 * Where the sun stands and what it sends, by latitude and day of the year. Start at {@link
 * hullalmanac.core.sun.SolarDay}.
 */
package hullalmanac.core.sun;
