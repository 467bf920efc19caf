/**
 * Writes JSON (RFC 8259) for other programs to read. Start at {@link
 * hullalmanac.exchange.json.Json}.
 */
package hullalmanac.exchange.json;
