/** Runs work off the event thread. Start at {@link hullalmanac.ui.task.SwingTaskRunner}. */
package hullalmanac.ui.task;
