package hullalmanac.service;

import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.pdf.PaperPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Writes papers as PDF files. Everything here touches files and may take a second or more. */
public final class PaperService {
  private static final int LONGEST_NAME = 80;

  private PaperService() {}

  /**
   * A paper that was written.
   *
   * @param lacking what the font has no letters for, a sentence each; mostly none
   */
  public record Written(Path file, List<String> lacking) {
    public Written {
      lacking = List.copyOf(lacking);
    }
  }

  /**
   * Writes a paper into a file that is new, or that was written by this program before.
   *
   * @param record whose photos stand on it
   * @throws RecordException when it cannot be written, or holds something else
   */
  public static Written write(RecordService record, Paper paper, Path file) {
    try {
      refuseStranger(file);
      PaperPdf.Made made = PaperPdf.of(paper, record.photos());
      WholeFile.write(file, made.bytes());
      return new Written(file, made.lacking());
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The paper cannot be written to "
              + file
              + ". Close it where it is open, and choose a folder that is there, with room in it.",
          e);
    }
  }

  private static void refuseStranger(Path file) throws IOException {
    if (Files.exists(file)
        && !(Files.isRegularFile(file) && PaperPdf.isOurs(Files.readAllBytes(file)))) {
      throw new RecordException(
          RecordException.Kind.IN_THE_WAY,
          file + " holds something else than a paper of this program. Choose another name.");
    }
  }

  /**
   * Writes a paper into a folder of its own in a record; one of the same name and day is written
   * over.
   */
  static Written inRecord(RecordService record, Paper paper, LocalDate day) {
    Path folder = record.folder().resolve("papers");
    try {
      // In the record's folder, which is not made anew where it is gone.
      if (!Files.isDirectory(folder)) {
        Files.createDirectory(folder);
      }
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The folder " + folder + " cannot be made. Look whether the record is still there.",
          e);
    }
    return write(record, paper, folder.resolve(name(paper, day)));
  }

  private static String name(Paper paper, LocalDate day) {
    String words =
        (paper.title() + " " + paper.about()).replaceAll("[^\\p{L}\\p{N}-]+", " ").strip();
    int end =
        words.codePointCount(0, words.length()) <= LONGEST_NAME
            ? words.length()
            : words.offsetByCodePoints(0, LONGEST_NAME);
    return day + " " + words.substring(0, end).strip() + ".pdf";
  }
}
