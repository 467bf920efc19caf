/** Lives and dates held against closed forms, hand checks and rules that must never fail. */
package hullalmanac.core.life;
