package hullalmanac.exchange.csv;

/**
 * Something in a list that cannot be taken as it is.
 *
 * @param file name of the file, or of the folder
 * @param line line as an editor counts it, 0 when it is not about a line
 * @param column name of the column, empty when it is not about one
 * @param message what is wrong
 * @param advice what to do
 */
public record CsvProblem(String file, long line, String column, String message, String advice) {
  /** One line for people: where, what, and what to do. */
  public String text() {
    String where =
        file + (line > 0 ? ", line " + line : "") + (column.isEmpty() ? "" : ", " + column);
    return where + ": " + message + ". " + advice + ".";
  }
}
