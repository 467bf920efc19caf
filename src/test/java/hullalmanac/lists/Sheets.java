package hullalmanac.lists;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Makes spreadsheets as people have them, and files that are none. */
final class Sheets {
  private Sheets() {}

  /** Fills a sheet. */
  interface Filling {
    void of(Worksheet sheet);
  }

  /** An .xlsx file with one sheet, written by a library. */
  static byte[] written(Filling filling) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "made", "1.0")) {
      filling.of(book.newWorksheet("Boats"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static void row(Worksheet sheet, int row, Object... values) {
    for (int c = 0; c < values.length; c++) {
      if (values[c] instanceof LocalDate day) {
        sheet.value(row, c, day);
        sheet.style(row, c).format("dd/mm/yyyy").set();
      } else if (values[c] instanceof Number number) {
        sheet.value(row, c, number);
      } else if (values[c] != null) {
        sheet.value(row, c, String.valueOf(values[c]));
      }
    }
  }

  /** A title and headings that are merged, owners merged over the rows of their boats. */
  static byte[] merged() {
    return written(
        s -> {
          row(s, 0, "Boats in our care 2026");
          s.range(0, 0, 0, 6).merge();
          row(s, 2, "Owner", null, "Boat", null, null, "Where", "Last done");
          s.range(2, 0, 2, 1).merge();
          s.range(2, 2, 2, 4).merge();
          s.range(2, 6, 3, 6).merge();
          row(s, 3, "Name", "Phone", "Name", "Length", "Beam", "Harbour");
          row(
              s,
              4,
              "Ada Finch",
              5550110,
              "Whimbrel",
              31,
              10.5,
              "Quillhaven",
              LocalDate.of(2025, 5, 14));
          row(s, 5, null, null, "Turnstone", 27.5, 9, "Quillhaven", LocalDate.of(2025, 9, 2));
          s.range(4, 0, 5, 0).merge();
          s.range(4, 1, 5, 1).merge();
          row(s, 6, "Ben Marsh", "555-0111", "Knot", 40, 12.25, "Oyster Hard", null);
        });
  }

  /** Lengths whose unit is only in the format of the numbers, days in several formats. */
  static byte[] formats() {
    return written(
        s -> {
          row(s, 0, "Boat", "Owner", "Size", "Last wash");
          row(s, 1, "Whimbrel", "Ada Finch", 9.45, null);
          row(s, 2, "Turnstone", "Ben Marsh", 8.2, null);
          for (int r = 1; r < 3; r++) {
            s.style(r, 2).format("0.00\" m\"").set();
          }
          s.value(1, 3, 45791.4375);
          s.style(1, 3).format("d-mmm-yy hh:mm").set();
          s.value(2, 3, 45902);
          s.style(2, 3).format("[$-407]d. mmmm yyyy").set();
        });
  }

  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>";
  private static final String MAIN =
      " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
  private static final String REL =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  /**
   * A file as a spreadsheet writes it, made by hand: formulas with and without values, an error, a
   * note pinned to a cell, a second sheet that is hidden.
   */
  static byte[] formulas() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(
        "[Content_Types].xml",
        HEAD
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
            + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
            + "</Types>");
    files.put("_rels/.rels", rels("officeDocument", "xl/workbook.xml"));
    files.put(
        "xl/workbook.xml",
        HEAD
            + "<workbook"
            + MAIN
            + " xmlns:r=\""
            + REL
            + "\"><sheets><sheet name=\"Boats\" sheetId=\"1\" r:id=\"rId1\"/>"
            + "<sheet name=\"Prices\" sheetId=\"2\" state=\"hidden\" r:id=\"rId2\"/></sheets></workbook>");
    files.put(
        "xl/_rels/workbook.xml.rels",
        rels("worksheet", "worksheets/sheet1.xml", "worksheets/sheet2.xml"));
    files.put("xl/worksheets/sheet1.xml", boats());
    files.put("xl/worksheets/_rels/sheet1.xml.rels", rels("comments", "../comments1.xml"));
    files.put(
        "xl/comments1.xml",
        HEAD
            + "<comments"
            + MAIN
            + "><authors><author>x</author></authors><commentList><comment ref=\"A3\" authorId=\"0\">"
            + "<text><r><t>Never without </t></r><r><t>fenders</t></r></text></comment></commentList></comments>");
    files.put(
        "xl/worksheets/sheet2.xml",
        HEAD
            + "<worksheet"
            + MAIN
            + "><sheetData><row r=\"1\">"
            + text("A1", "Wash")
            + "<c r=\"B1\"><v>90</v></c></row></sheetData></worksheet>");
    return zip(files);
  }

  /** Two boats, one with formulas that gave values, one with a formula that gave none. */
  private static String boats() {
    return HEAD
        + "<worksheet"
        + MAIN
        + "><sheetData>"
        + "<row r=\"1\">"
        + text("A1", "Boat")
        + text("B1", "Owner")
        + text("C1", "LOA ft")
        + text("D1", "Beam ft")
        + "</row>"
        + "<row r=\"2\">"
        + text("A2", "Whimbrel")
        + "<c r=\"B2\" t=\"str\"><f>F2&amp;\" Finch\"</f><v>Ada Finch</v></c>"
        + "<c r=\"C2\"><f>30+1</f><v>31</v></c><c r=\"D2\"><f>C2/3</f></c></row>"
        + "<row r=\"3\">"
        + text("A3", "Turnstone")
        + text("B3", "Ben Marsh")
        + "<c r=\"C3\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c><c r=\"D3\"><v>9.4499999999999993</v></c></row>"
        + "</sheetData></worksheet>";
  }

  private static String text(String cell, String text) {
    return "<c r=\"" + cell + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  private static String rels(String type, String... targets) {
    StringBuilder rels =
        new StringBuilder(
            HEAD
                + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
    for (int i = 0; i < targets.length; i++) {
      rels.append("<Relationship Id=\"rId")
          .append(i + 1)
          .append("\" Type=\"")
          .append(REL)
          .append('/')
          .append(type)
          .append("\" Target=\"")
          .append(targets[i])
          .append("\"/>");
    }
    return rels.append("</Relationships>").toString();
  }

  /** An archive of texts. */
  static byte[] zip(Map<String, String> files) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** An archive that calls itself a spreadsheet and unpacks to more than 100 MB. */
  static byte[] bomb() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
      zip.write("<workbook/>".getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] blanks = new byte[1024 * 1024];
      java.util.Arrays.fill(blanks, (byte) ' ');
      for (int i = 0; i < 101; i++) {
        zip.write(blanks);
      }
      zip.closeEntry();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
