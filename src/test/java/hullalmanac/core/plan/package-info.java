/** Tests of plans of correction. */
package hullalmanac.core.plan;
