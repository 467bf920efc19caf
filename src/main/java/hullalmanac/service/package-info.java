/**
 * What the program can do: each act checks its input, works in one transaction and returns what
 * came of it.
 *
 * <p>Start at {@link hullalmanac.service.FleetService}. No screens, no standard streams, no SQL
 * belong here.
 */
package hullalmanac.service;
