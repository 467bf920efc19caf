package hullalmanac.service;

import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.WholeFile;
import hullalmanac.exchange.pdf.PaperPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes papers as PDF files. */
public final class PaperService {
  private PaperService() {}

  /**
   * Writes a paper into a file that is new, or that was written by this program before.
   *
   * @throws RecordException when it cannot be written, or holds something else
   */
  public static void write(MadePaper paper, Path file) {
    try {
      refuseStranger(file);
      WholeFile.write(file, paper.made().bytes());
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.READ_ONLY,
          "The paper cannot be written to "
              + file
              + ". Close it where it is open, and choose a folder that is there, with room in it.",
          e);
    }
  }

  /** The same into a file named by its path as text. */
  public static void write(MadePaper paper, String file) {
    write(paper, Path.of(file));
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
  static Path inRecord(RecordService record, MadePaper paper) {
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
    Path file = folder.resolve(paper.fileName());
    write(paper, file);
    return file;
  }
}
