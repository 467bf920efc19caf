/** The exposure clock held against day by day sums written a second time. */
package hullalmanac.core.exposure;
