/**
 * What a person does in a day, as pure functions over a record. Start at {@link
 * hullalmanac.core.work.PhotoSorting}. Files and rows are not written here; what is proposed, a
 * person may change.
 */
package hullalmanac.core.work;
