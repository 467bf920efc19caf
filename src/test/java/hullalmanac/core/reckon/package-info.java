/** Dew points and hull numbers held against their sources row by row. */
package hullalmanac.core.reckon;
