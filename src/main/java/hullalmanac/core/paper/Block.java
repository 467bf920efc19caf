package hullalmanac.core.paper;

import hullalmanac.core.life.Survival;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.BoatTimeline;
import java.util.List;
import java.util.Optional;

/** A part of a paper. */
public sealed interface Block {
  /**
   * A heading of a part.
   *
   * @param level 2 for a part, 3 for a part of a part
   */
  record Heading(int level, String text) implements Block {
    public Heading {
      if (level < 2 || level > 3) {
        throw new IllegalArgumentException("headings have level 2 or 3, not " + level);
      }
      Texts.require(text, "a heading");
    }
  }

  /** Sentences; lines of their own stay so. */
  record Words(String text) implements Block {}

  /** What has to be read first: that a paper is a draft, what a credit corrects. */
  record Lead(String text) implements Block {}

  /** Small words that limit what was said before. */
  record Note(String text) implements Block {}

  /** To whom it goes, a line each. */
  record Recipient(List<String> lines) implements Block {
    public Recipient {
      lines = List.copyOf(lines);
    }
  }

  /** Names with what they are. */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /** A name with what it is. */
  record Fact(String name, String value) {}

  /** Sentences of a kind, a dot before each. */
  record Points(List<String> points) implements Block {
    public Points {
      points = List.copyOf(points);
    }
  }

  /** The same with a square to tick before each. */
  record Ticks(List<String> points) implements Block {
    public Ticks {
      points = List.copyOf(points);
    }
  }

  /** What can hurt someone or spoil a boat; never takes the place of label and local rules. */
  record Cautions(List<String> texts) implements Block {
    public Cautions {
      texts = List.copyOf(texts);
    }
  }

  /**
   * A table.
   *
   * @param caption what it lists, for those who hear it read; not printed
   * @param rows a text a column
   * @param sums rows below, set apart
   */
  record Table(String caption, List<Column> columns, List<List<String>> rows, List<SumRow> sums)
      implements Block {
    public Table {
      Texts.require(caption, "what a table lists");
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      sums = List.copyOf(sums);
      for (List<String> row : rows) {
        requireFit(row, columns);
      }
      for (SumRow sum : sums) {
        requireFit(sum.cells(), columns);
      }
    }

    private static void requireFit(List<String> row, List<Column> columns) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(row + " does not fit " + columns);
      }
    }
  }

  /**
   * A row below a table.
   *
   * @param cells a text a column; the first reaches over empty ones beside it
   * @param strong whether it is what one looks for
   */
  record SumRow(List<String> cells, boolean strong) {
    public SumRow {
      cells = List.copyOf(cells);
    }

    static SumRow strong(String... cells) {
      return new SumRow(List.of(cells), true);
    }
  }

  /**
   * A column of a table.
   *
   * @param number whether it stands at the right
   * @param share of the width, in percent; 0 for what is left
   */
  record Column(String name, boolean number, int share) {
    /** A column of words that takes what is left. */
    public static Column words(String name) {
      return new Column(name, false, 0);
    }

    /** A column of words of a width. */
    public static Column words(String name, int share) {
      return new Column(name, false, share);
    }

    /** A column of numbers. */
    public static Column number(String name, int share) {
      return new Column(name, true, share);
    }
  }

  /**
   * Photos beside each other.
   *
   * @param words of what and when, under them
   */
  record Photos(String words, List<Photo> photos) implements Block {
    public Photos {
      photos = List.copyOf(photos);
    }
  }

  /**
   * A photo.
   *
   * @param file name of a file among the photos of the record
   * @param words under it, and for those who cannot see it
   */
  record Photo(String file, String words) {
    public Photo {
      Texts.require(words, "the words of a photo");
    }
  }

  /**
   * A drawing.
   *
   * @param alternative what it says, for those who cannot see it
   */
  record Drawing(Chart chart, String alternative) implements Block {
    public Drawing {
      Texts.require(alternative, "the words of a drawing");
    }
  }

  /** What is drawn. */
  sealed interface Chart {}

  /** A boat over time. */
  record OverTime(BoatTimeline timeline) implements Chart {}

  /**
   * How many of a product's coats still protect, by months.
   *
   * @param label months that its label claims
   */
  record Surviving(Survival survival, Optional<Double> label) implements Chart {}

  /** Blocks that stand on one page where they fit on one. */
  record Kept(List<Block> blocks) implements Block {
    public Kept {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * What somebody drew to sign with.
   *
   * @param words who signed and when, under it and for those who cannot see it
   */
  record Signed(Signature signature, String words) implements Block {
    public Signed {
      Texts.require(words, "who signed");
    }
  }

  /** Lines to write on with a pencil. */
  record Blanks(List<String> names) implements Block {
    public Blanks {
      names = List.copyOf(names);
    }
  }
}
