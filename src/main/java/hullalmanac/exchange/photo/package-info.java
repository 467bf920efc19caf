/**
 * Photo files: what a file says of itself, kept under a name made from its content, and shown small
 * and upright. Start at {@link hullalmanac.exchange.photo.PhotoReader}, then {@link
 * hullalmanac.exchange.photo.PhotoFiles}. Which visit a photo belongs to is reckoned in {@code
 * core.work}; rows are not written here.
 */
package hullalmanac.exchange.photo;
