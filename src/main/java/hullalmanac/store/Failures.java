package hullalmanac.store;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Says in words for people what the database said in codes. */
final class Failures {
  /** What the triggers of schema step 9 say. */
  private static final String ISSUED = "an issued invoice stays";

  private Failures() {}

  static RecordException of(Path file, SQLException e) {
    SQLiteErrorCode code =
        e instanceof SQLiteException s ? s.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    if (code == SQLiteErrorCode.SQLITE_READONLY_DBMOVED) {
      return gone(file, e);
    }
    if (isOfIssued(e)) {
      return new RecordException(
          Kind.OTHER,
          "An issued invoice is neither changed nor taken out. Nothing was changed; write a credit.",
          e);
    }
    return switch (primary(code)) {
      case 5, 6 ->
          new RecordException(
              Kind.LOCKED,
              "The record "
                  + file
                  + " is in use by another program. Close it there, then try again.",
              e);
      case 8 ->
          new RecordException(
              Kind.READ_ONLY,
              "The record "
                  + file
                  + " cannot be written to. Move it to a folder of your own, or take the write protection off.",
              e);
      case 10 ->
          new RecordException(
              Kind.OTHER,
              "The disk with the record "
                  + file
                  + " does not answer. Was a stick pulled out? Nothing was changed; put it back and try again.",
              e);
      case 11, 26 -> corrupt(file, e);
      case 13 ->
          new RecordException(
              Kind.FULL,
              "There is no room left for the record "
                  + file
                  + ". Nothing was changed; make room and try again.",
              e);
      case 14 ->
          new RecordException(
              Kind.MISSING,
              "The record " + file + " cannot be opened. Look whether it is still there.",
              e);
      case 19 ->
          new RecordException(
              Kind.OTHER,
              "The change does not fit the record "
                  + file
                  + ": something it belongs to is gone, or an id is taken. Nothing was changed.",
              e);
      default ->
          new RecordException(
              Kind.OTHER, "The record " + file + " could not be used. Nothing was changed.", e);
    };
  }

  /** Whether something was refused because it was issued. */
  static boolean isOfIssued(SQLException e) {
    return String.valueOf(e.getMessage()).contains(ISSUED);
  }

  static RecordException gone(Path file, Throwable cause) {
    return new RecordException(
        Kind.MISSING,
        "The record "
            + file
            + " is no longer where it was: its folder was moved, or a stick was pulled out."
            + " Nothing was changed; put it back and try again.",
        cause);
  }

  static RecordException corrupt(Path file, Throwable cause) {
    return new RecordException(
        Kind.CORRUPT,
        "The record " + file + " is damaged. It was left as it is; restore the newest good copy.",
        cause);
  }

  private static int primary(SQLiteErrorCode code) {
    return code.code & 0xff;
  }
}
