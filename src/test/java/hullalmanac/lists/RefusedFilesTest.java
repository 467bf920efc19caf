package hullalmanac.lists;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.exchange.list.ListFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no list, or none that can be read, is refused with a sentence that says what to do. */
class RefusedFilesTest {
  private static final byte[] OLD_OFFICE = {
    (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
  };

  private static byte[] latin(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] oldOffice(String stream) {
    byte[] name = stream.getBytes(StandardCharsets.UTF_16LE);
    byte[] all = new byte[600 + name.length];
    System.arraycopy(OLD_OFFICE, 0, all, 0, OLD_OFFICE.length);
    System.arraycopy(name, 0, all, 512, name.length);
    return all;
  }

  static Stream<Arguments> workbooks() {
    byte[] cut = new byte[900];
    System.arraycopy(Sheets.merged(), 0, cut, 0, cut.length);
    return Stream.of(
        Arguments.of(
            "old.xls",
            oldOffice("Workbook"),
            "old.xls is an old .xls file, whose form is not read. Open it in a spreadsheet and save it as .xlsx or CSV."),
        Arguments.of(
            "locked.xlsx",
            oldOffice("EncryptedPackage"),
            "locked.xlsx is locked with a password. Open it in a spreadsheet, save it without the password, and bring that in."),
        Arguments.of(
            "letter.doc",
            oldOffice("WordDocument"),
            "letter.doc is an old office file, not a list. Open it in a spreadsheet and save it as .xlsx or CSV."),
        Arguments.of(
            "boats.ods",
            Sheets.zip(Map.of("mimetype", "application/vnd.oasis.opendocument.spreadsheet")),
            "boats.ods is an .ods file, whose form is not read. Open it in a spreadsheet and save it as .xlsx or CSV."),
        Arguments.of(
            "boats.xlsb",
            Sheets.zip(Map.of("xl/workbook.bin", "x")),
            "boats.xlsb is an .xlsb file, whose form is not read. Open it in a spreadsheet and save it as .xlsx or CSV."),
        Arguments.of(
            "letter.docx",
            Sheets.zip(Map.of("word/document.xml", "<x/>")),
            "letter.docx is a text document. Copy the table out of it and paste it here."),
        Arguments.of(
            "all.zip",
            Sheets.zip(Map.of("boats.csv", "Boat\nKnot")),
            "all.zip is an archive, not a list. Unpack it and choose the list in it."),
        Arguments.of(
            "cut.xlsx",
            cut,
            "cut.xlsx is damaged. Open it in a spreadsheet, save it again as .xlsx, and bring that in."),
        Arguments.of(
            "hollow.xlsx",
            Sheets.zip(Map.of("xl/workbook.xml", "<workbook><sheets>")),
            "hollow.xlsx is damaged. Open it in a spreadsheet, save it again as .xlsx, and bring that in."),
        Arguments.of(
            "bomb.xlsx",
            Sheets.bomb(),
            "bomb.xlsx unpacks to over 100 MB, which no owner list does. Save the sheet with the list alone, as CSV."),
        Arguments.of(
            "blank.xlsx",
            Sheets.written(s -> s.value(0, 0, "  ")),
            "blank.xlsx has nothing in its sheets."));
  }

  static Stream<Arguments> strangers() {
    return Stream.of(
        Arguments.of(
            "list.pdf",
            latin("%PDF-1.7\n1 0 obj"),
            "list.pdf is a PDF. Copy the table out of it and paste it here, or ask for the list as .xlsx."),
        Arguments.of(
            "boat.jpg",
            latin("\u00FF\u00D8\u00FF\u00E0\0\u0010JFIF\0"),
            "boat.jpg is a photo, not a list. Type the list into a spreadsheet first."),
        Arguments.of(
            "list.png",
            latin("\u0089PNG\r\n\u001A\n\0\0\0\rIHDR"),
            "list.png is a picture, not a list. Type the list into a spreadsheet first."),
        Arguments.of(
            "almanac.db",
            latin("SQLite format 3\0 more"),
            "almanac.db is a database, not a list. Export the list from it as CSV."),
        Arguments.of(
            "boats.xls",
            latin("<html><table><tr><td>Boat</td></tr></table></html>"),
            "boats.xls is a web page, whatever it is called. Open it in a spreadsheet and save it as .xlsx or CSV."),
        Arguments.of(
            "boats.xml",
            latin("<?xml version=\"1.0\"?><boats/>"),
            "boats.xml is XML, not a list. Open it in a spreadsheet and save it as .xlsx or CSV."),
        Arguments.of(
            "boats.rtf",
            latin("{\\rtf1\\ansi Boats}"),
            "boats.rtf is a text document. Copy the table out of it and paste it here."),
        Arguments.of(
            "people.vcf",
            latin("BEGIN:VCARD\nFN:Ada Finch\nEND:VCARD"),
            "people.vcf is a set of contact cards, not a list. Export the contacts as CSV."),
        Arguments.of(
            "boats.json",
            latin("[{\"boat\": \"Knot\"}]"),
            "boats.json is JSON, not a list. Export the list as CSV."));
  }

  static Stream<Arguments> texts() {
    String rows =
        IntStream.range(0, 5001).mapToObj(i -> "Boat " + i).collect(Collectors.joining("\n"));
    String wide = IntStream.range(0, 201).mapToObj(i -> "x" + i).collect(Collectors.joining(","));
    return Stream.of(
        Arguments.of("empty.csv", new byte[0], "empty.csv is empty."),
        Arguments.of(
            "blanks.csv",
            latin(" \n,,\n ; \n"),
            "blanks.csv has nothing in it but blanks and signs."),
        Arguments.of(
            "noise.csv",
            new byte[] {1, 0, 2, 0, 0, 7, 9, 0, 0, 3},
            "noise.csv is not a text and not a spreadsheet that can be read. Save the list as .xlsx or CSV."),
        Arguments.of(
            "letter.txt",
            latin(
                """
                Dear Ada, this is how it stands with your boat this spring.
                She has come through the winter well and wants no more than a wash.
                We will see to the topsides in May when the weather is dry enough.
                """),
            "letter.txt reads like a letter, not like a list: its lines have no columns. Put each boat into a row of its own, with a column for each thing that is known of it."),
        Arguments.of(
            "long.csv",
            latin(rows),
            "long.csv has more than 5000 rows. Bring it in in smaller parts."),
        Arguments.of(
            "wide.csv",
            latin(wide + "\n" + wide),
            "wide.csv has more than 200 columns. Keep those that say something of boats and owners."));
  }

  @ParameterizedTest
  @MethodSource({"workbooks", "strangers", "texts"})
  void isRefusedWithASentence(String name, byte[] bytes, String sentence) {
    assertThat(ListFile.read(name, bytes)).isEqualTo(new ListFile.Refused(sentence));
  }

  @Test
  void aFolderAMissingFileAndALargeOneAreRefusedToo(@TempDir Path folder) throws IOException {
    assertThat(ListFile.read(folder))
        .isEqualTo(
            new ListFile.Refused(
                folder.getFileName() + " is a folder. Choose the file of the list in it."));
    assertThat(ListFile.read(folder.resolve("gone.csv")))
        .isEqualTo(
            new ListFile.Refused(
                "gone.csv cannot be read. Look whether it is still there and whether you may read it."));
    Path large = folder.resolve("large.csv");
    Files.write(large, new byte[20 * 1024 * 1024 + 1]);
    assertThat(ListFile.read(large))
        .isEqualTo(
            new ListFile.Refused(
                "large.csv is over 20 MB, which no owner list is. Save the sheet with the list alone, as CSV."));
  }

  @Test
  void aPastedBlankIsRefused() {
    assertThat(ListFile.pasted(" \n\t\n"))
        .isEqualTo(new ListFile.Refused("pasted list has nothing in it but blanks and signs."));
  }
}
