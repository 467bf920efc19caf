package hullalmanac.exchange.list;

import hullalmanac.core.list.Cell;
import hullalmanac.core.list.Grid;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** Reads the sheets of an .xlsx file. */
final class Workbooks {
  private Workbooks() {}

  /** A sheet that holds something. */
  private record Page(String name, boolean visible, List<List<Cell>> rows) {}

  static ListFile.Outcome read(String name, byte[] bytes) {
    String damaged =
        name + " is damaged. Open it in a spreadsheet, save it again as .xlsx, and bring that in.";
    try {
      Optional<Parts> parts = Parts.of(bytes);
      if (parts.isEmpty()) {
        return new ListFile.Refused(
            name
                + " unpacks to over 100 MB, which no owner list does. Save the sheet with the list"
                + " alone, as CSV.");
      }
      List<Page> pages = pages(bytes, parts.get());
      return pages.isEmpty()
          ? new ListFile.Refused(name + " has nothing in its sheets.")
          : new ListFile.Read(grids(name, pages));
    } catch (IOException | ExcelReaderException e) {
      return new ListFile.Refused(damaged);
    } catch (RuntimeException e) {
      // The library lets some damage through as whatever it met first.
      return new ListFile.Refused(damaged);
    }
  }

  private static List<Page> pages(byte[] bytes, Parts parts) throws IOException {
    List<Page> pages = new ArrayList<>();
    try (ReadableWorkbook book = book(bytes)) {
      List<Sheet> sheets;
      try (Stream<Sheet> all = book.getSheets()) {
        sheets = all.toList();
      }
      for (int i = 0; i < sheets.size(); i++) {
        Sheet sheet = sheets.get(i);
        List<List<Cell>> rows = rows(sheet, book.isDate1904());
        parts.spread(i, rows);
        parts.addNotes(i, rows);
        if (rows.stream().flatMap(List::stream).anyMatch(c -> !c.isBlank())) {
          pages.add(
              new Page(sheet.getName(), sheet.getVisibility() == SheetVisibility.VISIBLE, rows));
        }
      }
    }
    return pages;
  }

  /** With the formats of numbers; a file that has none cannot be asked for them. */
  private static ReadableWorkbook book(byte[] bytes) throws IOException {
    try {
      return new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true));
    } catch (ExcelReaderException e) {
      return new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(false, true));
    }
  }

  private static List<List<Cell>> rows(Sheet sheet, boolean from1904) throws IOException {
    List<List<Cell>> rows = new ArrayList<>();
    try (Stream<Row> all = sheet.openStream()) {
      for (Row row : (Iterable<Row>) all::iterator) {
        List<Cell> cells = new ArrayList<>();
        for (org.dhatim.fastexcel.reader.Cell cell : row) {
          if (cell != null && cell.getColumnIndex() <= ListFile.MOST_COLUMNS) {
            Cell read = SheetCell.read(cell, from1904);
            if (!read.isBlank()) {
              pad(cells, cell.getColumnIndex());
              cells.add(read);
            }
          }
        }
        if (!cells.isEmpty()) {
          while (rows.size() < Math.min(row.getRowNum() - 1, ListFile.MOST_ROWS + 1)) {
            rows.add(new ArrayList<>());
          }
          rows.add(cells);
        }
        if (rows.size() > ListFile.MOST_ROWS + 1) {
          break;
        }
      }
    }
    return rows;
  }

  static void pad(List<Cell> cells, int width) {
    while (cells.size() < width) {
      cells.add(Cell.BLANK);
    }
  }

  private static List<Grid> grids(String name, List<Page> pages) {
    List<Grid> grids = new ArrayList<>();
    for (Page page : pages) {
      List<String> remarks = new ArrayList<>();
      if (pages.size() > 1) {
        remarks.add(
            "The file has other sheets, which do not come in with this one: "
                + pages.stream()
                    .filter(p -> !p.name().equals(page.name()))
                    .map(p -> p.name() + (p.visible() ? "" : " (hidden)"))
                    .collect(Collectors.joining(", "))
                + ".");
      }
      grids.add(
          Grid.trimmed(
              pages.size() == 1 ? name : name + ", sheet " + page.name(), page.rows(), remarks));
    }
    return grids;
  }
}
