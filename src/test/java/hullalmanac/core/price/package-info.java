/** What bills and prices hold to. */
package hullalmanac.core.price;
