/** Holds forecasts against invented fleets whose truth is known. */
package hullalmanac.study;
