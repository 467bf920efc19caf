/**
 * The exposure clock: how fast a surface wears where its boat lies. One unit of dose is the wear of
 * an average day of the year on light upright topsides in open salt water at 30° latitude under a
 * mean sky, in weekend use.
 *
 * <p>Start at {@link hullalmanac.core.exposure.SurfaceClock}. Practice values are in {@code
 * WearPractice}. What a coat makes of the dose belongs to {@code core.life}.
 */
package hullalmanac.core.exposure;
