/**
 * Finds the rows of a record by the words in them, wherever one is in the program. Start at {@link
 * hullalmanac.core.find.FindIndex}. Keys, gate codes and absences are not among what is found.
 */
package hullalmanac.core.find;
