/** Holds supplies to sums made by hand. */
package hullalmanac.core.supply;
