/**
 * Reads people's own lists: CSV in whatever encoding and with whatever separator, xlsx, and pasted
 * text, each to a grid of texts. What cannot be a list is refused with a sentence that says what to
 * do.
 *
 * <p>Start at {@link hullalmanac.exchange.list.ListFile}. What a list means is not understood here
 * but in {@code core.list}; the program's own lists are read in {@code exchange.csv}.
 */
package hullalmanac.exchange.list;
