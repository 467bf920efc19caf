/**
 * Photo files: what a file says of itself, and named after their content. Start at {@link
 * hullalmanac.exchange.photo.PhotoReader}, then {@link hullalmanac.exchange.photo.PhotoFiles}.
 */
package hullalmanac.exchange.photo;
