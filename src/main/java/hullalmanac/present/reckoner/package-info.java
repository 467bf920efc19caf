/**
 * The Reckoner: small sums of the dockside, each a sheet of its own that keeps its values while the
 * program is open. Start at {@link hullalmanac.present.reckoner.ReckonerPresenter}. Nothing here
 * changes the record; the mathematics is in {@link hullalmanac.core.reckon}.
 */
package hullalmanac.present.reckoner;
