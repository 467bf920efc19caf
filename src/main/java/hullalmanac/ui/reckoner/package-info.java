/** The Reckoner. Start at {@link hullalmanac.ui.reckoner.ReckonerPanel}. */
package hullalmanac.ui.reckoner;
