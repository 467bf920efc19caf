/** A boat shown to her owner, full screen. Start at {@link hullalmanac.ui.owner.OwnerWindow}. */
package hullalmanac.ui.owner;
