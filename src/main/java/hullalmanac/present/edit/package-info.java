/**
 * What is written on each sheet: fields of rows, as texts and back. Start at {@link
 * hullalmanac.present.edit.FieldOf}. How a sheet looks does not belong here.
 */
package hullalmanac.present.edit;
