/**
 * Fleets that obey laws of nature of their own, to try a forecast against a truth that it was not
 * made from.
 */
package hullalmanac.study.generator;
