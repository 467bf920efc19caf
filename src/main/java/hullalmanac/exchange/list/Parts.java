package hullalmanac.exchange.list;

import hullalmanac.core.list.Cell;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * What the spreadsheet library leaves out of an .xlsx file: which cells are merged, and notes that
 * are pinned to cells.
 *
 * <p>References: ECMA-376 part 1, 18.3.1.55 (mergeCell), 18.7.3 (comment); part 2, 9.3
 * (relationships).
 *
 * @param sheets what is known of each sheet, in their order
 */
record Parts(List<OfSheet> sheets) {
  private static final long MOST_BYTES = 100L * 1024 * 1024;
  private static final Pattern RANGE = Pattern.compile("([A-Z]+)(\\d+)(?::([A-Z]+)(\\d+))?");
  private static final String BOOK = "xl/workbook.xml";

  /**
   * One sheet.
   *
   * @param merged ranges such as {@code A1:C1}
   * @param notes by the cell to which they are pinned
   */
  record OfSheet(List<String> merged, Map<String, String> notes) {}

  /** A range of cells, from 0. */
  private record Range(int left, int top, int right, int bottom) {}

  /** Takes a file apart; absent where it unpacks to more than is sane. */
  static Optional<Parts> of(byte[] bytes) throws IOException {
    Map<String, byte[]> files = new HashMap<>();
    long all = 0;
    try (ZipFile zip = opened(bytes)) {
      for (ZipArchiveEntry e : Collections.list(zip.getEntries())) {
        byte[] content;
        try (InputStream in = zip.getInputStream(e)) {
          content = in.readNBytes((int) (MOST_BYTES - all + 1));
        }
        all += content.length;
        if (all > MOST_BYTES) {
          return Optional.empty();
        }
        boolean needed =
            e.getName().equals(BOOK)
                || e.getName().endsWith(".rels")
                || e.getName().startsWith("xl/worksheets/")
                || e.getName().contains("comments");
        if (needed) {
          files.put(e.getName(), content);
        }
      }
    }
    try {
      return Optional.of(new Parts(sheets(files)));
    } catch (XMLStreamException e) {
      throw new IOException(e);
    }
  }

  /**
   * Opens an archive by the list of its files at its end, which is the only one to be relied on.
   */
  static ZipFile opened(byte[] bytes) throws IOException {
    return ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
  }

  private static List<OfSheet> sheets(Map<String, byte[]> files) throws XMLStreamException {
    Map<String, String> targets = related(files, BOOK);
    List<OfSheet> sheets = new ArrayList<>();
    for (String id : values(files, BOOK, "sheet", "id")) {
      String sheet = targets.getOrDefault(id, "");
      Map<String, String> notes = new LinkedHashMap<>();
      for (String target : related(files, sheet).values()) {
        if (target.matches(".*/comments[^/]*\\.xml")) {
          notes.putAll(notes(files, target));
        }
      }
      sheets.add(new OfSheet(values(files, sheet, "mergeCell", "ref"), notes));
    }
    return sheets;
  }

  /** The files that one file refers to, by the ids by which it does. */
  private static Map<String, String> related(Map<String, byte[]> files, String file)
      throws XMLStreamException {
    int slash = file.lastIndexOf('/');
    String folder = slash < 0 ? "" : file.substring(0, slash + 1);
    String rels = folder + "_rels/" + file.substring(slash + 1) + ".rels";
    Map<String, String> related = new LinkedHashMap<>();
    walk(
        files.get(rels),
        xml -> {
          if (xml.isStartElement() && xml.getLocalName().equals("Relationship")) {
            String target = String.valueOf(xml.getAttributeValue(null, "Target"));
            related.put(
                xml.getAttributeValue(null, "Id"),
                target.startsWith("/") ? target.substring(1) : inFolder(folder, target));
          }
        });
    return related;
  }

  private static String inFolder(String folder, String target) {
    String at = folder;
    String rest = target;
    while (rest.startsWith("../")) {
      rest = rest.substring(3);
      at = at.replaceFirst("[^/]+/$", "");
    }
    return at + rest;
  }

  /** The values of an attribute of all elements of a name, in order. */
  private static List<String> values(
      Map<String, byte[]> files, String file, String element, String attribute)
      throws XMLStreamException {
    List<String> values = new ArrayList<>();
    walk(
        files.get(file),
        xml -> {
          if (xml.isStartElement() && xml.getLocalName().equals(element)) {
            for (int i = 0; i < xml.getAttributeCount(); i++) {
              boolean own =
                  xml.getAttributeLocalName(i).equals(attribute)
                      && (attribute.equals("ref") || xml.getAttributeNamespace(i) != null);
              if (own) {
                values.add(xml.getAttributeValue(i));
              }
            }
          }
        });
    return values;
  }

  private static Map<String, String> notes(Map<String, byte[]> files, String file)
      throws XMLStreamException {
    Map<String, String> notes = new LinkedHashMap<>();
    String[] cell = {""};
    boolean[] text = {false};
    walk(
        files.get(file),
        xml -> {
          if (xml.isStartElement() && xml.getLocalName().equals("comment")) {
            cell[0] = String.valueOf(xml.getAttributeValue(null, "ref"));
          } else if (xml.isStartElement() && xml.getLocalName().equals("t")) {
            text[0] = true;
          } else if (xml.isEndElement() && xml.getLocalName().equals("t")) {
            text[0] = false;
          } else if (xml.isCharacters() && text[0]) {
            notes.merge(cell[0], xml.getText(), String::concat);
          }
        });
    return notes;
  }

  /** Looks at one event after the other. */
  private interface Looker {
    void at(XMLStreamReader xml);
  }

  private static void walk(byte[] file, Looker looker) throws XMLStreamException {
    if (file == null) {
      return;
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    InputStream in = new ByteArrayInputStream(file);
    XMLStreamReader xml = factory.createXMLStreamReader(in);
    while (xml.hasNext()) {
      xml.next();
      looker.at(xml);
    }
  }

  private static Optional<Range> range(String text) {
    Matcher m = RANGE.matcher(text);
    if (!m.matches()) {
      return Optional.empty();
    }
    int left = column(m.group(1));
    int top = Integer.parseInt(m.group(2)) - 1;
    return Optional.of(
        new Range(
            left,
            top,
            m.group(3) == null ? left : Math.min(column(m.group(3)), ListFile.MOST_COLUMNS),
            m.group(4) == null
                ? top
                : Math.min(Integer.parseInt(m.group(4)) - 1, ListFile.MOST_ROWS)));
  }

  private static int column(String letters) {
    int column = 0;
    for (int i = 0; i < letters.length(); i++) {
      column = column * 26 + letters.charAt(i) - 'A' + 1;
    }
    return column - 1;
  }

  /** Lets what stands in merged cells reach into all of them, as far as the sheet is filled. */
  void spread(int sheet, List<List<Cell>> rows) {
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    for (String merged : sheet < sheets.size() ? sheets.get(sheet).merged() : List.<String>of()) {
      range(merged)
          .filter(r -> r.top() < rows.size() && r.left() < rows.get(r.top()).size())
          .ifPresent(r -> spread(r, rows, width));
    }
  }

  private static void spread(Range r, List<List<Cell>> rows, int width) {
    Cell cell = rows.get(r.top()).get(r.left());
    for (int row = r.top(); row <= Math.min(r.bottom(), rows.size() - 1); row++) {
      for (int c = r.left(); c <= Math.min(r.right(), width - 1); c++) {
        Workbooks.pad(rows.get(row), c + 1);
        if (rows.get(row).get(c).isBlank() && !cell.isBlank()) {
          rows.get(row).set(c, cell.spreading());
        }
      }
    }
  }

  /** Puts notes that are pinned to cells into a column of their own at the right. */
  void addNotes(int sheet, List<List<Cell>> rows) {
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    Map<String, String> notes = sheet < sheets.size() ? sheets.get(sheet).notes() : Map.of();
    notes.forEach(
        (cell, text) ->
            range(cell)
                .filter(r -> r.top() < ListFile.MOST_ROWS)
                .ifPresent(
                    r -> {
                      while (rows.size() <= r.top()) {
                        rows.add(new ArrayList<>());
                      }
                      List<Cell> row = rows.get(r.top());
                      Workbooks.pad(row, width + 1);
                      String before = row.get(width).text();
                      String note = "Note on " + cell + ": " + text.strip();
                      row.set(width, Cell.of(before.isEmpty() ? note : before + "\n" + note));
                    }));
  }
}
