/** Tests of what stands on a job card. */
package hullalmanac.core.card;
