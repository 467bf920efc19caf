/**
 * Tables that are only read, and how one wants them: which columns, in what order, how wide, sorted
 * by which. Start at {@link hullalmanac.present.table.TableMemory}.
 */
package hullalmanac.present.table;
