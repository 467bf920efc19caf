/**
 * What is done with money, as edits of a record, and what a record says of it: estimates that
 * become visits, invoices with numbers without gaps, credits, payments in part, deposits, who owes
 * what, and what work brings.
 *
 * <p>Start at {@link hullalmanac.core.takings.Accounts}: it says what is open of an invoice. Each
 * act is a function of the record and plain values and returns a {@link
 * hullalmanac.core.work.Change}. What was issued is never changed; a mistake in it is corrected by
 * a credit. Nothing here reads a clock or writes a file.
 */
package hullalmanac.core.takings;
