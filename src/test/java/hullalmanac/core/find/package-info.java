/** Tests of finding. Start at {@link hullalmanac.core.find.FindIndexTest}. */
package hullalmanac.core.find;
