/**
 * What is left in the bottles, what planned visits need, how pads wear.
 *
 * <p>Start at {@link hullalmanac.core.supply.Supplies}. Nothing here changes a row: what is left is
 * reckoned from what somebody saw in a bottle and from the steps done since (decision 19). How much
 * a square metre takes does not belong here but into {@code core.finish}.
 */
package hullalmanac.core.supply;
