/**
 * One panel for all sheets. Start at {@link hullalmanac.ui.sheet.SheetPanel}; what is written on
 * which sheet is decided in {@code present.edit}.
 */
package hullalmanac.ui.sheet;
