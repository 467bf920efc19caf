/**
 * The fewest passes that bring a surface to the finish agreed with its owner, without cutting more
 * than it can spare.
 *
 * <p>Start at {@link hullalmanac.core.finish.FewestPasses}: it takes what a record and a look say
 * of one surface and hands back the plans that no other beats. What steps really reach and cost is
 * learned from the record's own readings and minutes in {@link hullalmanac.core.finish.Experience}.
 * Starter values stand in {@code FinishPractice}. Money does not belong here, nor does the life of
 * a coat.
 */
package hullalmanac.core.finish;
