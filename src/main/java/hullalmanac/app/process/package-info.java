/**
 * What concerns the process itself: a second start, and what must happen when it ends. Start at
 * {@link hullalmanac.app.process.FrontDoor}.
 */
package hullalmanac.app.process;
