/** The people. Start at {@link hullalmanac.present.people.PeoplePresenter}. */
package hullalmanac.present.people;
