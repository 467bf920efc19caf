/** The money. Start at {@link hullalmanac.present.takings.TakingsPresenter}. */
package hullalmanac.present.takings;
