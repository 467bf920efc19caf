/**
 * What a person does, as edits of a record: taking a boat in from a phone call, copying, moving and
 * finishing a visit, "washed, all fine", the visits a care plan makes, taking things out.
 *
 * <p>Start at {@link hullalmanac.core.work.VisitFinish}: it says which coats a visit laid and
 * ended. Each act is a function of the record, a source of ids and plain values; it returns an edit
 * or, where something can be wrong with what was given, a {@link hullalmanac.core.work.Change}.
 * Nothing here reads a clock, writes a file or reckons a forecast.
 */
package hullalmanac.core.work;
