package hullalmanac.service;

import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Pixels;
import hullalmanac.exchange.pdf.PaperPages;
import hullalmanac.exchange.pdf.PaperPdf;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** A paper laid out on its pages, before it is written anywhere. */
public final class MadePaper {
  private static final int LONGEST_NAME = 80;

  private final Paper paper;
  private final LocalDate day;
  private final PaperPdf.Made made;
  private final List<String> texts;

  private MadePaper(Paper paper, LocalDate day, PaperPdf.Made made, List<String> texts) {
    this.paper = paper;
    this.day = day;
    this.made = made;
    this.texts = texts;
  }

  /**
   * Lays papers out. What it needs of the record is only read: it may work beside the writing.
   *
   * @param photos the folder of the record's photos
   */
  public record Maker(Path photos) {
    /**
     * Lays a paper out. May take a second or more.
     *
     * @param day of which it is, for its name
     */
    public MadePaper make(Paper paper, LocalDate day) {
      PaperPdf.Made made = PaperPdf.of(paper, photos);
      return new MadePaper(paper, day, made, PaperPages.texts(made));
    }
  }

  /** What a paper is. */
  public Paper paper() {
    return paper;
  }

  /** Of which day it is. */
  public LocalDate day() {
    return day;
  }

  /** As a PDF. */
  public PaperPdf.Made made() {
    return made;
  }

  /** What the font has no letters for, a sentence each; mostly none. */
  public List<String> lacking() {
    return made.lacking();
  }

  /** What stands on each page. */
  public List<String> texts() {
    return texts;
  }

  /**
   * A page as a picture. May take a tenth of a second.
   *
   * @param index from 0
   * @param width in pixels
   */
  public Pixels picture(int index, int width) {
    return PaperPages.picture(made, index, width);
  }

  /** What its file is called. */
  public String fileName() {
    String words =
        (paper.title() + " " + paper.about()).replaceAll("[^\\p{L}\\p{N}-]+", " ").strip();
    int end =
        words.codePointCount(0, words.length()) <= LONGEST_NAME
            ? words.length()
            : words.offsetByCodePoints(0, LONGEST_NAME);
    return day + " " + words.substring(0, end).strip() + ".pdf";
  }
}
