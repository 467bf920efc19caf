/** Composition root. */
package hullalmanac.app;
