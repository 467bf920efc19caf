package hullalmanac.exchange.list;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Files that are no lists, or lists in a form that is not read, told by how they begin. */
final class Strangers {
  private static final int LOOKED_AT = 64;
  private static final String AS_LIST = " Open it in a spreadsheet and save it as .xlsx or CSV.";

  /**
   * How a kind of file begins.
   *
   * @param letters the bytes as letters of ISO 8859-1
   * @param at where they stand, from 0
   */
  private record Beginning(String letters, int at, String what) {
    static Beginning of(String letters, int at, String what) {
      return new Beginning(letters, at, what);
    }

    boolean fits(byte[] file) {
      int end = at + letters.length();
      return file.length >= end
          && new String(file, at, letters.length(), StandardCharsets.ISO_8859_1).equals(letters);
    }
  }

  private static final List<Beginning> PICTURES =
      List.of(
          Beginning.of("\u00FF\u00D8\u00FF", 0, "a photo"),
          Beginning.of("\u0089PNG\r\n", 0, "a picture"),
          Beginning.of("GIF8", 0, "a picture"),
          Beginning.of("ftypheic", 4, "a photo"),
          Beginning.of("ftypmif1", 4, "a photo"),
          Beginning.of("II*\0", 0, "a picture"),
          Beginning.of("MM\0*", 0, "a picture"),
          Beginning.of("BM", 0, "a picture"));

  private static final Beginning OLD_OFFICE =
      Beginning.of("\u00D0\u00CF\u0011\u00E0\u00A1\u00B1\u001A\u00E1", 0, "");

  private Strangers() {}

  static boolean isZip(byte[] bytes) {
    return Beginning.of("PK\u0003\u0004", 0, "").fits(bytes);
  }

  /** Why a file cannot be read as a list; absent where it may be one. */
  static Optional<String> sentence(String name, byte[] bytes) {
    if (isZip(bytes)) {
      return zip(name, bytes);
    }
    if (OLD_OFFICE.fits(bytes)) {
      return Optional.of(oldOffice(name, bytes));
    }
    if (Beginning.of("%PDF", 0, "").fits(bytes)) {
      return Optional.of(
          name
              + " is a PDF. Copy the table out of it and paste it here, or ask for the list as .xlsx.");
    }
    for (Beginning picture : PICTURES) {
      if (picture.fits(bytes) && looksBinary(bytes)) {
        return Optional.of(
            name
                + " is "
                + picture.what()
                + ", not a list. Type the list into a spreadsheet first.");
      }
    }
    if (Beginning.of("SQLite format 3", 0, "").fits(bytes)) {
      return Optional.of(name + " is a database, not a list. Export the list from it as CSV.");
    }
    return markup(name, bytes);
  }

  private static boolean looksBinary(byte[] bytes) {
    for (int i = 0; i < Math.min(bytes.length, 4 * LOOKED_AT); i++) {
      if (bytes[i] == 0 || (bytes[i] & 0xFF) > 0x7F) {
        return true;
      }
    }
    return false;
  }

  private static Optional<String> markup(String name, byte[] bytes) {
    String begins =
        new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.ISO_8859_1)
            .replaceFirst("^\u00EF\u00BB\u00BF", "")
            .strip()
            .toLowerCase(Locale.ROOT);
    if (begins.startsWith("<!doctype html")
        || begins.startsWith("<html")
        || begins.startsWith("<table")) {
      return Optional.of(name + " is a web page, whatever it is called." + AS_LIST);
    }
    if (begins.startsWith("<?xml")) {
      return Optional.of(name + " is XML, not a list." + AS_LIST);
    }
    if (begins.startsWith("{\\rtf")) {
      return Optional.of(name + " is a text document. Copy the table out of it and paste it here.");
    }
    if (begins.startsWith("begin:vcard")) {
      return Optional.of(
          name + " is a set of contact cards, not a list. Export the contacts as CSV.");
    }
    return begins.startsWith("[{") || begins.startsWith("{\"")
        ? Optional.of(name + " is JSON, not a list. Export the list as CSV.")
        : Optional.empty();
  }

  private static String oldOffice(String name, byte[] bytes) {
    String all = new String(bytes, StandardCharsets.UTF_16LE);
    String odd = new String(bytes, 1, bytes.length - 1, StandardCharsets.UTF_16LE);
    if (all.contains("EncryptedPackage") || odd.contains("EncryptedPackage")) {
      return name
          + " is locked with a password. Open it in a spreadsheet, save it without the password,"
          + " and bring that in.";
    }
    if (all.contains("Workbook") || all.contains("Book") || odd.contains("Workbook")) {
      return name
          + " is an old .xls file, whose form is not read. Open it in a spreadsheet and save it as"
          + " .xlsx or CSV.";
    }
    return name + " is an old office file, not a list." + AS_LIST;
  }

  private static Optional<String> zip(String name, byte[] bytes) {
    Set<String> entries = new HashSet<>();
    String type = "";
    try (ZipFile zip = Parts.opened(bytes)) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        entries.add(entry.getName());
        if (entry.getName().equals("mimetype")) {
          try (InputStream in = zip.getInputStream(entry)) {
            type = new String(in.readNBytes(2 * LOOKED_AT), StandardCharsets.US_ASCII);
          }
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      return Optional.of(
          name
              + " is damaged. Open it in a spreadsheet, save it again as .xlsx, and bring that in.");
    }
    if (entries.contains("xl/workbook.xml")) {
      return Optional.empty();
    }
    if (entries.contains("xl/workbook.bin")) {
      return Optional.of(name + " is an .xlsb file, whose form is not read." + AS_LIST);
    }
    if (type.contains("opendocument.spreadsheet")) {
      return Optional.of(
          name
              + " is an .ods file, whose form is not read. Open it in a spreadsheet and save it as"
              + " .xlsx or CSV.");
    }
    boolean text = entries.contains("word/document.xml") || type.contains("opendocument.text");
    return Optional.of(
        text
            ? name + " is a text document. Copy the table out of it and paste it here."
            : name + " is an archive, not a list. Unpack it and choose the list in it.");
  }
}
