/**
 * The record as a whole: where it lies, its copies, and what to do when a folder that two computers
 * share holds two. Start at {@link hullalmanac.present.house.House}, which the program does outside
 * the window.
 */
package hullalmanac.present.house;
