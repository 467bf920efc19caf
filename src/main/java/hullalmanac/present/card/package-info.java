/**
 * The card of a visit as it stands at the boat. Start at {@link
 * hullalmanac.present.card.CardPresenter}. What is ticked and timed here is of the day and stands
 * in no record.
 */
package hullalmanac.present.card;
