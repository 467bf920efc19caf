/**
 * Finding anything in the record from anywhere in the window. Start at {@link
 * hullalmanac.present.find.FindPresenter}.
 */
package hullalmanac.present.find;
