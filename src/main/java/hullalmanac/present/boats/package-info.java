/** The boats and each boat's page. Start at {@link hullalmanac.present.boats.BoatsPresenter}. */
package hullalmanac.present.boats;
