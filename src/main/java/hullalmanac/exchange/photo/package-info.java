/**
 * Photo files, named after their content. Start at {@link hullalmanac.exchange.photo.PhotoFiles}.
 */
package hullalmanac.exchange.photo;
