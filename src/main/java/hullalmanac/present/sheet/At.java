package hullalmanac.present.sheet;

/**
 * A field on a sheet.
 *
 * @param row the row of a grid; empty in a form
 */
public record At(String block, String row, String field) {}
