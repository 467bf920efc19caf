/**
 * Shelf: the products, and how long their coats really last. Start at {@link
 * hullalmanac.present.shelf.ShelfPresenter}.
 */
package hullalmanac.present.shelf;
