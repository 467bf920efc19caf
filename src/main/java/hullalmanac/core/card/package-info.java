/**
 * What stands on the card of a visit at the boat: steps, mixtures, dwell, what stops a step on this
 * boat, tools and what to look at.
 *
 * <p>Start at {@link hullalmanac.core.card.JobCard}; what may not go on before somebody has read it
 * is in {@link hullalmanac.core.card.Stops}. Cautions that hang on a product alone belong into
 * {@code core.report.Caution}.
 */
package hullalmanac.core.card;
