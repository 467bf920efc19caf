/** The people and what is known of them. Start at {@link hullalmanac.ui.people.PeoplePanel}. */
package hullalmanac.ui.people;
