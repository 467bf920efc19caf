package hullalmanac.core.list;

/**
 * A cell of a list as it was read from a file.
 *
 * @param text as a person sees it, without blanks around it; a day as {@code 2026-05-14}
 * @param kind what the file says it is
 * @param spread whether it stands in another cell and reaches into this one
 */
public record Cell(String text, Kind kind, boolean spread) {
  /** What a file says a cell is. */
  public enum Kind {
    TEXT,
    NUMBER,
    DAY,
    /** A formula that has no value. */
    ERROR
  }

  /** A cell without anything in it. */
  public static final Cell BLANK = new Cell("", Kind.TEXT, false);

  public Cell {
    text = text.strip();
  }

  /** A cell with a text. */
  public static Cell of(String text) {
    return new Cell(text, Kind.TEXT, false);
  }

  /** Whether nothing stands in it. */
  public boolean isBlank() {
    return text.isEmpty();
  }

  /** The same with another text, typed by a person. */
  Cell typed(String typed) {
    return new Cell(typed, Kind.TEXT, false);
  }

  /** The same, reaching into another cell. */
  public Cell spreading() {
    return new Cell(text, kind, true);
  }
}
