/**
 * The CSV set: a record as lists that a spreadsheet can read and write, one file a kind of row.
 *
 * <p>Start at {@link hullalmanac.exchange.csv.CsvSet}. The files and their columns are declared in
 * {@code CsvKind} and the classes named after what they hold; docs/formats/csv.md describes them.
 * Rules that need more than one row are in {@code core.record.RecordRules}.
 */
package hullalmanac.exchange.csv;
