/**
 * Flows in the real window, with real keys. Start at {@link hullalmanac.ui.window.NeedsDisplay}.
 */
package hullalmanac.ui.window;
