/**
 * Mail drafts: a message as a file (RFC 5322, RFC 2045 and those after it), and as a {@code
 * mailto:} link (RFC 6068). Nothing here sends, and nothing here can: the parts of the library that
 * could are not among what the program ships.
 *
 * <p>Start at {@link hullalmanac.exchange.mail.DraftFile}.
 */
package hullalmanac.exchange.mail;
