/**
 * Sheets: pages on which one writes. Start at {@link hullalmanac.present.sheet.Sheet}; what a sheet
 * shows is {@link hullalmanac.present.sheet.SheetState}, and one panel shows them all. What is
 * written on which sheet does not belong here.
 */
package hullalmanac.present.sheet;
