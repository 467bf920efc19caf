/**
 * The SQLite file of a record: opening, schema steps, transactions with their change log, copies,
 * and all SQL.
 *
 * <p>Start at {@link hullalmanac.store.Database}; the tables are in {@link
 * hullalmanac.store.AlmanacStore}. No rules of the trade belong here: values have been checked
 * before they come.
 */
package hullalmanac.store;
