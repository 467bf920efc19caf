/** Brings made-up lists of every ugliness into a record and holds what came of them. */
package hullalmanac.lists;
