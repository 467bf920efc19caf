package hullalmanac.present.sheet;

import hullalmanac.core.finish.GlossPath;
import hullalmanac.core.record.Signature;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a sheet shows.
 *
 * @param facts what is to be known of it first
 * @param trouble a sentence about what was not taken, while it stands
 */
public record SheetState(String title, String facts, List<Block> blocks, Optional<String> trouble) {
  public SheetState {
    blocks = List.copyOf(blocks);
  }

  /** The same with a sentence about what was not taken, unless it has one of its own. */
  public SheetState and(Optional<String> sentence) {
    return new SheetState(title, facts, blocks, trouble.or(() -> sentence));
  }

  /** A part of a sheet. */
  public sealed interface Block {
    /** What stands over it; empty where nothing does. */
    default String heading() {
      return "";
    }
  }

  /** Fields below each other, or beside each other where there is room. */
  public record Form(String id, String heading, List<Field> fields) implements Block {
    public Form {
      fields = List.copyOf(fields);
    }
  }

  /**
   * A field with its label.
   *
   * @param said what its text means
   */
  public record Field(String id, String label, Input input, String text, Said said) {}

  /**
   * A table one writes in.
   *
   * @param labels heading of the rows' labels; empty where rows speak for themselves
   * @param empty what is said when it has no rows
   */
  public record Grid(
      String id,
      String heading,
      String labels,
      List<Column> columns,
      List<GridRow> rows,
      String empty)
      implements Block {
    public Grid {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }
  }

  /** A column of a grid. */
  public record Column(String id, String label, Input input) {}

  /**
   * A row of a grid.
   *
   * @param label what it is about, in front; empty for rows that speak for themselves
   * @param cells a text a column
   * @param marked places of the cells that need a look; {@link Sheet#say} says why
   */
  public record GridRow(String id, String label, List<String> cells, Set<Integer> marked) {
    public GridRow {
      cells = List.copyOf(cells);
      marked = Set.copyOf(marked);
    }

    /** A row of which no cell needs a look. */
    public GridRow(String id, String label, List<String> cells) {
      this(id, label, cells, Set.of());
    }
  }

  /**
   * A place for a file, which is chosen, dropped or pasted, or for a text that is pasted.
   *
   * @param words what is to be done, or what was
   * @param choose what the button says that chooses one
   * @param kinds what files there are to choose from, in words
   * @param endings of their names, without a dot
   * @param copied what else can be pasted, such as "a copied table"; empty for nothing
   */
  public record Files(
      String id,
      String heading,
      String words,
      String choose,
      String kinds,
      List<String> endings,
      String copied)
      implements Block {
    public Files {
      endings = List.copyOf(endings);
    }
  }

  /**
   * Photos beside each other, each with its picture and its fields.
   *
   * @param words what is said of them as a whole; blank when nothing is
   * @param open whether photos can be dropped, pasted and chosen into it
   */
  public record Photos(String id, String heading, List<PhotoCard> cards, String words, boolean open)
      implements Block {
    public Photos {
      cards = List.copyOf(cards);
    }
  }

  /**
   * A photo.
   *
   * @param file whose picture is asked for with {@link Sheet#picture}
   * @param name what its file is called, for where it cannot be shown
   * @param facts what is known of it, such as its time
   * @param fields what is written of it; their row is the card's id
   * @param remove words for taking it out
   */
  public record PhotoCard(
      String id, String file, String name, String facts, List<Field> fields, String remove) {
    public PhotoCard {
      fields = List.copyOf(fields);
    }
  }

  /**
   * A field to sign in with a pointer, or a signature that was drawn.
   *
   * @param at where what is drawn is entered, as {@link Signature#text}; empty when it was wiped
   *     off
   * @param words what is to be done, or what was
   * @param strokes what was drawn, as such a text; empty when nothing was
   * @param open whether one can draw
   */
  public record Sign(At at, String heading, String words, String strokes, boolean open)
      implements Block {}

  /** Pages of a paper below each other; nothing is seen of none. */
  public record Pages(String id, List<Page> pages) implements Block {
    public Pages {
      pages = List.copyOf(pages);
    }
  }

  /**
   * A page of a paper.
   *
   * @param file whose picture is asked for with {@link Sheet#picture}, by its width
   * @param words what stands on it, for those who cannot see it
   */
  public record Page(String file, String words) {}

  /** Things to do. */
  public record Buttons(List<Button> buttons) implements Block {
    public Buttons {
      buttons = List.copyOf(buttons);
    }
  }

  /**
   * A thing to do.
   *
   * @param main whether it is what one most likely does next; Ctrl+Enter does it
   */
  public record Button(String id, String words, boolean main) {}

  /** A table that is only read. */
  public record Table(String heading, List<String> columns, List<List<String>> rows, String empty)
      implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }
  }

  /**
   * The gloss of a plan step by step, as a picture; nothing is seen of one without a way.
   *
   * @param description read out in place of the picture
   */
  public record Way(String id, String heading, Optional<GlossPath> path, String description)
      implements Block {}

  /**
   * A paragraph; nothing is seen of one without text.
   *
   * @param strong whether it is to catch the eye, as a caution is
   */
  public record Words(String text, boolean strong) implements Block {
    public Words(String text) {
      this(text, false);
    }
  }

  /**
   * What came out, large, with a button that copies it; nothing is seen of one without text.
   *
   * @param label what it is; blank where its text says enough
   * @param copy what is copied
   */
  public record Answer(String id, String label, String text, String copy) implements Block {}
}
