/**
 * Small sums of the dockside: dew point and coating window, hull numbers. Each stands alone; none
 * needs a record.
 */
package hullalmanac.core.reckon;
