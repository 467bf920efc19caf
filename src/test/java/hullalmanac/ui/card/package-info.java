/** The card of a visit, on the screen and on paper. */
package hullalmanac.ui.card;
