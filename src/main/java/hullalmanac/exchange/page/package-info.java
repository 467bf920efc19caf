/**
 * A record as a page that any browser shows. Start at {@link hullalmanac.exchange.page.RecordPage}.
 */
package hullalmanac.exchange.page;
