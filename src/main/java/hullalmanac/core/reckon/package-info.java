/** Being written. */
package hullalmanac.core.reckon;
