/**
 * Understands people's own lists of boats and owners: finds the headings, guesses what each column
 * says, reads the rows, finds what is known already, and says what would come in and what would
 * not. Nothing that stands in a list is lost: it becomes a value, goes into a note as it stands, or
 * is set aside with a reason.
 *
 * <p>Start at {@link hullalmanac.core.list.ListPlan}. Files and their formats do not belong here; a
 * list comes as a {@link hullalmanac.core.list.Grid}.
 */
package hullalmanac.core.list;
