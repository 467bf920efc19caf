/**
 * Contact cards: vCard 2.1, 3.0 (RFC 2426) and 4.0 (RFC 6350), in and out.
 *
 * <p>Start at {@link hullalmanac.exchange.vcard.CardFile}. Whether a card is somebody who is known
 * already is decided in {@code core.work}.
 */
package hullalmanac.exchange.vcard;
