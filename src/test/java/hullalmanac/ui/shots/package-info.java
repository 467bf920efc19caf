/** Takes the pictures of the guide. Start at {@link hullalmanac.ui.shots.Screenshots}. */
package hullalmanac.ui.shots;
