package hullalmanac.exchange.csv;

/**
 * A column of a file.
 *
 * @param name in the header
 * @param form how its cells are read and guarded
 * @param needed whether every row must fill it
 */
record Column(String name, Form form, boolean needed) {
  /** Whether a cell is free text, which is guarded against being run as a formula. */
  enum Form {
    TEXT,
    VALUE,
    /** Taken when importing, not written when exporting. */
    IMPORT_ONLY
  }

  static Column text(String name) {
    return new Column(name, Form.TEXT, false);
  }

  static Column needText(String name) {
    return new Column(name, Form.TEXT, true);
  }

  static Column value(String name) {
    return new Column(name, Form.VALUE, false);
  }

  static Column need(String name) {
    return new Column(name, Form.VALUE, true);
  }

  static Column importOnly(String name) {
    return new Column(name, Form.IMPORT_ONLY, false);
  }
}
