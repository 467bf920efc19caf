/** Shelf on the screen. Start at {@link hullalmanac.ui.shelf.ShelfPanel}; it decides nothing. */
package hullalmanac.ui.shelf;
