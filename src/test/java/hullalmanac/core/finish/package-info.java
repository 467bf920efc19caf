/** Tests of correction: steps, laws, budgets, and the planner. */
package hullalmanac.core.finish;
