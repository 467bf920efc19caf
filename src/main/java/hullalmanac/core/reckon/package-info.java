/**
 * Small sums of the dockside: dilution, spread, areas, prices by length, dew point and coating
 * window, hull numbers. Each stands alone, none needs a record, and each that is shown says its
 * {@link hullalmanac.core.reckon.Formula} and source. Units are values of the record.
 */
package hullalmanac.core.reckon;
