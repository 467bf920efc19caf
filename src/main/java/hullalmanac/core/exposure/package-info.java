/** Being written. */
package hullalmanac.core.exposure;
