/** Being written. */
package hullalmanac.core.sun;
