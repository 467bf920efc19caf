/**
 * A plan of correction from what is asked to the visit that it becomes.
 *
 * <p>Start at {@link hullalmanac.core.plan.SurfacePlans}: what is {@link
 * hullalmanac.core.plan.Asked asked} of one surface and what the planner of the fewest passes
 * answers. How gloss moves and what a surface can spare does not belong here but into {@code
 * core.finish}.
 */
package hullalmanac.core.plan;
