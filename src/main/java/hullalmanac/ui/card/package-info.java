/** The card of a visit, full screen. Start at {@link hullalmanac.ui.card.CardWindow}. */
package hullalmanac.ui.card;
